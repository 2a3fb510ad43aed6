import { readdirSync } from 'node:fs'

/** The test files whose path begins with one of these. */
export function testFiles(starts) {
  return readdirSync('tests', { recursive: true })
    .map((path) => `tests/${path}`)
    .filter((path) => path.endsWith('.test.ts') && starts.some((start) => path.startsWith(start)))
    .sort()
}
