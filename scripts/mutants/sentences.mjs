// Sentences of errors are for people; that each is there and of which error is tested by its code. They are not mutated.
const isSentence = (path) =>
  path.parentPath?.isNewExpression() &&
  /Error$/.test(path.parent.callee.name ?? '') &&
  path.parent.arguments.indexOf(path.node) === 1

export const strykerPlugins = [
  {
    kind: 'Ignore',
    name: 'sentences',
    value: { shouldIgnore: (path) => (isSentence(path) ? 'the sentence of an error' : undefined) },
  },
]
