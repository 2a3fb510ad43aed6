// Finds what a room of the built library exports, in its declaration files, with docstring and signature.
import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { parseSync } from 'vite'

/** A name the library exports. */
export interface PublicName {
  readonly name: string
  /** What it is declared with: `function`, `interface`, `type`, `class` or `const`. */
  readonly kind: string
  /** The docstring without its stars, '' where there is none. */
  readonly doc: string
  /** The declaration as it stands, docstrings of its members included. */
  readonly signature: string
  /** The compiled code of a function, to see what it throws; '' for what is gone at run time. */
  readonly code: string
}

/** Everything an index file exports, by name. Follows `export … from` through the files. */
export function publicNames(index: string): PublicName[] {
  const found = new Map<string, PublicName>()
  collect(index, null, found)
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1))
}

/** Collects the exports of a file, or those of them that are `wanted`: a map of the name there to the name outside. */
function collect(file: string, wanted: ReadonlyMap<string, string> | null, found: Map<string, PublicName>): void {
  const text = readFileSync(file, 'utf8')
  const { program, comments, errors } = parseSync(file, text, { lang: 'dts' })
  if (errors.length > 0) throw new Error(`${file} cannot be read: ${errors[0]?.message}`)
  for (const statement of program.body) {
    if (statement.type === 'ExportAllDeclaration') {
      collect(declarationOf(file, statement.source.value), null, found)
    } else if (statement.type === 'ExportNamedDeclaration' && statement.source) {
      const names = statement.specifiers.map(({ local, exported }) => [nameOf(local), nameOf(exported)] as const)
      collect(declarationOf(file, statement.source.value), new Map(names), found)
    } else if (statement.type === 'ExportNamedDeclaration' && statement.declaration) {
      const written = text.slice(statement.start, statement.end).replace(/^export (?:declare )?/, '')
      const [, kind, name] = /^(?:abstract )?(function|interface|type|class|const) (\w+)/.exec(written) ?? []
      if (kind === undefined || name === undefined) throw new Error(`${file}: what is "${written.slice(0, 40)}"?`)
      const outside = wanted === null ? name : wanted.get(name)
      if (outside === undefined) continue
      const doc = comments.findLast((one) => one.end <= statement.start)
      const isBeside = doc !== undefined && text.slice(doc.end, statement.start).trim() === ''
      const code = kind === 'function' ? codeOf(file, name) : ''
      found.set(outside, { name: outside, kind, doc: isBeside ? plain(doc.value) : '', signature: written, code })
    }
  }
}

function plain(comment: string): string {
  return comment
    .replace(/^\*/, '')
    .replace(/^[ \t]*\* ?/gm, '')
    .trim()
}

/** The compiled text of a function, from its name to the next thing at the edge of the file. */
function codeOf(declarations: string, name: string): string {
  const text = readFileSync(declarations.replace(/\.d\.ts$/, '.js'), 'utf8')
  return new RegExp(`^export (?:async )?function\\*? ${name}\\([\\s\\S]*?^}`, 'm').exec(text)?.[0] ?? ''
}

function declarationOf(from: string, specifier: string): string {
  return resolve(dirname(from), specifier.replace(/\.[jt]s$/, '.d.ts'))
}

function nameOf(name: { readonly type: string; readonly name?: string; readonly value?: unknown }): string {
  return name.name ?? String(name.value)
}
