// One room of the library as a page of Markdown.
import type { PublicName } from './reference-names.ts'

const KINDS = [
  { kind: 'function', heading: 'Functions' },
  { kind: 'const', heading: 'Values' },
  { kind: 'class', heading: 'Errors' },
  { kind: 'interface', heading: 'Shapes' },
  { kind: 'type', heading: 'Types' },
]

/** The page of a room: functions first, then what they take and give. */
export function pageOf(room: string, names: readonly PublicName[]): string {
  const parts = KINDS.flatMap(({ kind, heading }) => {
    const of = names.filter((name) => name.kind === kind)
    return of.length === 0 ? [] : [`## ${heading}`, ...of.map(sectionOf)]
  })
  const intro = `Made from the docstrings by \`npm run reference\`. Import from \`tillside/${room}\` or \`tillside\`.`
  return `${[`# tillside/${room}`, intro, ...parts].join('\n\n')}\n`
}

function sectionOf({ name, doc, signature }: PublicName): string {
  const [text = '', ...tags] = doc.split(/^(?=@)/m)
  const lines = tags.map((tag) => tag.trim())
  const examples = lines.filter((tag) => tag.startsWith('@example'))
  const others = lines.filter((tag) => !tag.startsWith('@example'))
  const parts = [
    `### ${name}`,
    `\`\`\`ts\n${signature.trim()}\n\`\`\``,
    text.trim(),
    others.map(listed).join('\n'),
    ...examples.map((tag) => `\`\`\`ts\n${tag.replace(/^@example\s*/, '')}\n\`\`\``),
  ]
  return parts.filter(Boolean).join('\n\n')
}

/** `@throws MoneyError …` as a line of a list. */
function listed(tag: string): string {
  const [, kind = '', rest = ''] = /^@(\w+)\s*([\s\S]*)$/.exec(tag) ?? []
  const text = rest.replace(/\s*\n\s*/g, ' ')
  return kind === 'param' ? `- \`${text.replace(/\s/, '`: ')}` : `- ${kind}: ${text}`
}
