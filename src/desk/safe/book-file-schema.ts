import * as z from 'zod/mini'
import { bookFile } from './book-file.ts'

/*
 * The shape of a book file as JSON Schema (2020-12), for programs that read our files. It is made from the very shape
 * that reads them, so the two cannot drift apart.
 */

const ID = 'https://tillside.example/book-file.schema.json'

const SLUG = { type: 'string', pattern: '^[A-Za-z0-9_-]{1,64}$' } as const
const MINOR = { type: 'integer', minimum: Number.MIN_SAFE_INTEGER, maximum: Number.MAX_SAFE_INTEGER } as const
/** What our own checks stand for, told apart by what they take. */
const CUSTOM: readonly { readonly takes: unknown; readonly schema: Record<string, unknown> }[] = [
  {
    takes: '0193b000-0000-7000-8000-000000000001',
    schema: {
      type: 'string',
      pattern: '^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$',
      description: 'UUID version 7 (RFC 9562)',
    },
  },
  {
    takes: '2026-11-25',
    schema: { type: 'string', format: 'date', pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'calendar date' },
  },
  { takes: '2026-11', schema: { type: 'string', pattern: '^\\d{4}-\\d{2}$', description: 'month' } },
  { takes: 'CAD', schema: { type: 'string', pattern: '^[A-Z]{3}$', description: 'ISO 4217 code' } },
]
const POSTINGS = {
  type: 'array',
  items: {
    type: 'object',
    properties: { account: { type: 'string' }, amount: { ...MINOR, description: 'minor units' } },
    required: ['account', 'amount'],
    additionalProperties: false,
  },
} as const

/** The JSON Schema of book files. */
export function bookFileSchema(): Record<string, unknown> {
  const shape = z.extend(bookFile, { sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)) })
  const schema = z.toJSONSchema(shape, {
    unrepresentable: 'any',
    override({ zodSchema, jsonSchema }) {
      if (zodSchema._zod.def.type !== 'custom') return
      Object.assign(jsonSchema, customSchema(zodSchema))
    },
  })
  return { ...schema, $id: ID, title: 'Tillside book file', description: DESCRIPTION }
}

const DESCRIPTION =
  'A household and every entry of its book. Canonical JSON (RFC 8785); sha256 is the SHA-256 of the canonical JSON of all other members. Amounts are whole minor units of settings.currency.'

function customSchema(schema: z.core.$ZodType): Record<string, unknown> {
  const takes = (value: unknown): boolean => z.safeParse(schema, value).success
  if (takes([])) return POSTINGS
  // A slug takes nearly everything here, so the narrow ones are asked what they refuse too.
  if (takes('a_slug-1')) return SLUG
  return CUSTOM.find((custom) => takes(custom.takes))?.schema ?? {}
}
