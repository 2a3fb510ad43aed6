import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** The browser tests that take longest, first: two run at a time, and none of them shall be left alone at the end. */
const LONGEST = ['ways', 'attacks', 'torture', 'guard', 'robust', 'order-life', 'torture-guard', 'facts', 'month-end']

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = LONGEST.findIndex((name) => moduleId.endsWith(`/browser/${name}.test.ts`))
      return at < 0 ? LONGEST.length : at
    }
    return (await super.sort(files)).sort((a, b) => place(a) - place(b))
  }
}

/** Tests that set up a browser's globals: each file has them to itself. */
const WITH_GLOBALS = ['background', 'desk', 'guard', 'popup'].map((room) => `tests/${room}/**/*.test.{ts,tsx}`)

// `unit` and `unit-alone` need Node alone; `browser` drives the built extension in the browsers of the machine.
export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', ...WITH_GLOBALS],
          environment: 'node',
          // Pure code leaves nothing behind: files share what they import, which took half of the time.
          isolate: false,
        },
      },
      {
        test: {
          name: 'unit-alone',
          include: WITH_GLOBALS,
          environment: 'node',
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          // Each file has its browsers, profiles and shops to itself; more than two at a time would only wait for each other.
          maxWorkers: 2,
          // After the unit tests: they take all there is of the processor.
          sequence: { groupOrder: 1 },
          // A busy machine is slow, not wrong.
          expect: { poll: { timeout: 15_000 } },
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
