import { describe, expect, it } from 'vitest'
import { PAPERS, type Paper, paperFaces } from '../../../src/desk/plan/sheets/paper-faces.ts'

const paper: Paper = { name: 'a6', front: 10, back: 12 }
const lines = (count: number): number[] => Array.from({ length: count }, (_, n) => n)

describe('paperFaces', () => {
  it('a short sheet has a front and a back, the rest of both is empty lines', () => {
    expect(paperFaces(lines(3), paper)).toEqual([
      { isFront: true, lines: [0, 1, 2], blank: 7 },
      { isFront: false, lines: [], blank: 12 },
    ])
    expect(paperFaces([], paper).map((face) => face.blank)).toEqual([10, 12])
  })

  it('a sheet with too few empty lines left gets another, always a front with its back', () => {
    expect(paperFaces(lines(14), paper).map((face) => face.blank)).toEqual([0, 8])
    expect(paperFaces(lines(15), paper).map((face) => face.blank)).toEqual([0, 7, 10, 12])
  })

  it('every line stands once and in order, whatever their number and the paper', () => {
    for (const one of [...PAPERS, paper]) {
      for (let count = 0; count < 150; count++) {
        const faces = paperFaces(lines(count), one)
        expect(faces.flatMap((face) => face.lines)).toEqual(lines(count))
        expect(faces.length % 2).toBe(0)
        expect(faces.reduce((sum, face) => sum + face.blank, 0)).toBeGreaterThanOrEqual(8)
        faces.forEach((face, n) => {
          expect(face.isFront).toBe(n % 2 === 0)
          expect(face.lines.length + face.blank).toBe(face.isFront ? one.front : one.back)
        })
      }
    }
  })
})
