/** One element of a statement file, of XML or of SGML. */
export interface Tag {
  /** Without a namespace prefix; in capitals where the format is OFX. */
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  /** The element's own text, trimmed. */
  text: string
  readonly children: Tag[]
  /** Line of the file on which it starts, from 1. */
  readonly row: number
}

/** How deep a statement may nest: the real ones stay below 20. Deeper files are made to overwhelm a reader. */
export const DEEPEST = 64

/** The element found by going down these names, the first of each; null when one is missing. */
export function tagAt(tag: Tag, ...path: readonly string[]): Tag | null {
  let at: Tag | undefined = tag
  for (const name of path) {
    at = at?.children.find((child) => child.name === name)
    if (!at) return null
  }
  return at ?? null
}

/** All children of a name. */
export function tagsNamed(tag: Tag | null, name: string): Tag[] {
  return tag?.children.filter((child) => child.name === name) ?? []
}

/** The text found by going down these names; null when one is missing or the text is empty. */
export function textAt(tag: Tag | null, ...path: readonly string[]): string | null {
  const text = tag && tagAt(tag, ...path)?.text
  return text === null || text === undefined || text === '' ? null : text
}

/** All elements of a name, however deep, in the order of the file. */
export function tagsBelow(tag: Tag, name: string): Tag[] {
  return tag.children.flatMap((child) => [...(child.name === name ? [child] : []), ...tagsBelow(child, name)])
}
