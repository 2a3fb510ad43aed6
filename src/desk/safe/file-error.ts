/** A file that is to be restored cannot be. Nothing was changed. */
export class FileError extends Error {
  override readonly name = 'FileError'
  constructor(
    readonly code:
      | 'file-not-ours'
      | 'file-newer'
      | 'file-broken'
      | 'file-altered'
      | 'file-wrong-passphrase'
      | 'file-no-book'
      | 'file-other-currency'
      | 'file-conflict',
    message: string,
  ) {
    super(message)
  }
}
