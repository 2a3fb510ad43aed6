// The packages of others that a build has in it, and the notice their licences ask for.
import { readdirSync, readFileSync } from 'node:fs'
import { root } from './set-up.mjs'

/** Licences that let their work go along in ours with a notice. Another one is for a person to read first. */
const ALLOWED = ['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'MPL-2.0']

const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby
granted, provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
THIS SOFTWARE.`

/** A plugin for the bundler that writes down in `found` which packages' code went into what it made. */
export function noteBundled(found) {
  return {
    name: 'note-bundled',
    generateBundle(_, files) {
      for (const file of Object.values(files)) {
        if (file.type !== 'chunk') continue
        for (const id of Object.keys(file.modules)) {
          const name = /.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(id)?.[1]
          if (name) found.add(name.replace('\\', '/'))
        }
      }
    },
  }
}

/** The notice for packages by their names: what each is, and its licence in full. */
export function notices(names) {
  const head = `Tillside has code of these packages in it, each under its own licence. They are unchanged, but for being put
together and shortened, and for one assignment of markup in preact that is taken out. Their sources are in the npm
registry under these names and versions.
`
  return [head, ...[...names].sort().map(notice)].join(`\n${'-'.repeat(78)}\n\n`)
}

function notice(name) {
  const folder = `${root}node_modules/${name}`
  const { version, license, author } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'))
  if (!ALLOWED.includes(license)) {
    throw new Error(
      `${name} is under ${license}. Read that licence, then add it to ALLOWED in scripts/third-party.mjs.`,
    )
  }
  const file = readdirSync(folder).find((entry) => /^(?:licen[cs]e|copying)(?:\.(?:md|txt))?$/i.test(entry))
  const text = file ? readFileSync(`${folder}/${file}`, 'utf8') : withoutFile(name, license, author)
  return `${name} ${version} (${license})\n\n${text.replaceAll('\r\n', '\n').trim()}\n`
}

/** saxes names its licence and author and brings no text. */
function withoutFile(name, license, author) {
  if (license !== 'ISC' || typeof author !== 'string') {
    throw new Error(`${name} brings no text of its licence ${license}. Add it to scripts/third-party.mjs.`)
  }
  return `Copyright ${author} and contributors\n\n${ISC}`
}
