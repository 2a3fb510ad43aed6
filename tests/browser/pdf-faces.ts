import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A page of a PDF: its size in points (1/72 inch) and its text, piece by piece in the order it was drawn. */
export interface PdfFace {
  readonly width: number
  readonly height: number
  readonly text: string
}

/** Reads what was printed. */
export async function pdfFaces(pdf: Uint8Array): Promise<PdfFace[]> {
  const task = getDocument({ data: new Uint8Array(pdf), useSystemFonts: true })
  const document = await task.promise
  const faces: PdfFace[] = []
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n)
    const { width, height } = page.getViewport({ scale: 1 })
    const { items } = await page.getTextContent()
    faces.push({ width, height, text: items.map((item) => ('str' in item ? item.str : '')).join(' ') })
  }
  await task.destroy()
  return faces
}
