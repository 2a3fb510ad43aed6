/** Codes a program can test; the message is a sentence for a person. */
export type PlanErrorCode = 'bad-pay' | 'bad-goal' | 'bad-options' | 'bad-shares'

/** Something that cannot be planned. `code` says why; `message` says what to do. */
export class PlanError extends Error {
  override readonly name = 'PlanError'
  constructor(
    readonly code: PlanErrorCode,
    message: string,
  ) {
    super(message)
  }
}
