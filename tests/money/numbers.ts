import { seeded } from '../../demo-data/seeded.ts'

/** Whole numbers from one to another, both included, that look random and are the same for the same seed. */
export function numbersFrom(seed: number): (least: number, most: number) => number {
  const random = seeded(seed)
  return (least, most) => least + Math.floor(random() * (most - least + 1))
}
