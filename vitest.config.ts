import { defineConfig } from 'vitest/config'

// Two projects: `unit` needs Node alone; `browser` drives the built extension in the browsers of the machine.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          environment: 'node',
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          fileParallelism: false,
          // A busy machine is slow, not wrong.
          expect: { poll: { timeout: 15_000 } },
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
