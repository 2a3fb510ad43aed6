/** The part of npm parse-price that the comparison uses; it brings no types of its own. */
declare module 'parse-price' {
  /** The number in a price text; 0 where there is none. */
  export default function parsePrice(text: string): number
}
