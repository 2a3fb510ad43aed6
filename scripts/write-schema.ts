// Writes the JSON Schema of book files where it is told to: `tsx scripts/write-schema.ts FILE`, called by the build.
import { writeFileSync } from 'node:fs'
import { bookFileSchema } from '../src/desk/safe/book-file-schema.ts'

const [, , file] = process.argv
if (file === undefined) throw new Error('Name the file to write.')
writeFileSync(file, `${JSON.stringify(bookFileSchema(), null, 2)}\n`)
