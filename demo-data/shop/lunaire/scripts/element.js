/** Makes an element with these properties and children. */
export function element(tag, properties, ...children) {
  const node = Object.assign(document.createElement(tag), properties)
  node.append(...children)
  return node
}

/** A line of sums: label, leader dots, amount. */
export function totalLine(className, label, amount) {
  return element(
    'div',
    { className },
    element('span', {}, label),
    element('span', { className: 'dots', ariaHidden: 'true' }),
    element('span', { className: 'amount' }, amount),
  )
}
