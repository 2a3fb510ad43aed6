/** A request the worker will not serve, though nothing is broken. */
export class Refusal extends Error {
  override readonly name = 'Refusal'
  constructor(
    readonly code: 'restore-incomplete' | 'unknown-nonce' | 'unread-page' | 'no-tag' | 'no-permission',
    message: string,
  ) {
    super(message)
  }
}
