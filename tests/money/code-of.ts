import { MoneyError, type MoneyErrorCode } from '../../src/money/money-error.ts'

/** The code of the MoneyError that an action throws; fails the test if it throws nothing or something else. */
export function codeOf(action: () => unknown): MoneyErrorCode {
  try {
    action()
  } catch (error) {
    if (error instanceof MoneyError) return error.code
    throw error
  }
  throw new Error('Nothing was thrown.')
}
