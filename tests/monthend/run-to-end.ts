/** Runs a piece of work that is done in steps to its end and gives its result. */
export function runToEnd<Step, Result>(steps: Generator<Step, Result>): Result {
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}
