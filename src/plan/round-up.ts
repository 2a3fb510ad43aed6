/** The next multiple of a step, both whole numbers of minor units: 3334 by 500 is 3500. */
export function roundUp(minor: number, step: number): number {
  return Math.ceil(minor / step) * step
}
