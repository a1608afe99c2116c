import { expect, test } from 'vitest'
import { type Node, nodesOf, placeOf, readServer } from './sources.ts'

/** A name by which spans go, alone or at the end of a path: `span`, `line.span`, `textSpan`. */
const SPAN = /^(?:span|stretch|\w+Span)$/

/** A place that moves with its text has its ends by asking: `{ ...span }` would hold none of them. */
function spreadsSpan(node: Node): boolean {
  if (node.type !== 'ObjectExpression') return false
  return (node.properties as readonly Node[]).some(({ type, argument }) => {
    if (type !== 'SpreadElement') return false
    const { type: kind, name, property } = argument as Node
    const last = kind === 'MemberExpression' ? (property as Node).name : name
    return SPAN.test(String(last))
  })
}

test('no span is spread into another', () => {
  // Runs and stretches of a layout are plain values.
  const read = readServer().filter(({ folder }) => !['geometry', 'layout'].includes(folder))
  const found = read.flatMap((source) =>
    source.nodes.filter(spreadsSpan).map((node) => placeOf(source, node)),
  )
  expect(found).toEqual([])
})

test('one that is spread would be found', () => {
  for (const text of ['x = { ...span, end: 3 }', 'x = { ...entry.textSpan }'])
    expect(nodesOf(text).some(spreadsSpan)).toBe(true)
  expect(nodesOf('x = [...spans, f(span)]').some(spreadsSpan)).toBe(false)
})
