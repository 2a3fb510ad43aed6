/** Gives the person a text as a file, through the browser's own download. Nothing leaves the machine. */
export function saveFile(name: string, text: string, type: string): void {
  // Not revoked: the download may start after this returns, and the address ends with the page anyway.
  const url = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
}
