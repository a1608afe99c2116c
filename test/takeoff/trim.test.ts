import { expect, test } from 'vitest'
import type { RimEdge } from '../../server/src/layout/floor-area.ts'
import { measuresOf } from '../../server/src/takeoff/amount.ts'
import { trimRuns } from '../../server/src/takeoff/trim-run.ts'

const MM = 1_000_000
const METRES = measuresOf('mm')

/** An edge 3 m east and 4 m north: 5 m of trim. */
function edge(kind: string | null, { room = 'den', wall = 'a' as string | null } = {}): RimEdge {
  const to = { x: 3000 * MM, y: 4000 * MM }
  return { from: { x: 0, y: 0 }, to, kind, room, wall, label: 'wall', span: null } as never
}

const runs = (edges: readonly RimEdge[]) =>
  trimRuns(edges, METRES).map(({ room, printed }) => [room, printed])

test('each room, then all', () => {
  const rim = [edge('base kept'), edge(null, { room: 'hall' }), edge('base new')]
  expect(runs(rim)).toEqual([
    ['den', '10.0 m'],
    ['hall', '5.0 m'],
    [null, '15.0 m'],
  ])
})

test('an edge off the walls has no base, nor has a floor without walls a run', () => {
  expect(runs([edge('base kept', { wall: null })])).toEqual([[null, '0.0 m']])
  expect(runs([])).toEqual([[null, '0.0 m']])
})

test.each(['tub', 'hearth', 'slider', 'nosing', 'open edge', 'carpet'])(
  'no base runs along what is a %s',
  (kind) => {
    expect(runs([edge(kind)])).toEqual([[null, '0.0 m']])
  },
)

test.each(['base kept', 'base off and back', 'base new', 'no base', 'cabinet'])(
  'what is %s counts to the perimeter',
  (kind) => {
    expect(runs([edge(kind)]).at(-1)).toEqual([null, '5.0 m'])
  },
)

test('inches and feet are counted in feet, everything else in metres', () => {
  const styles = ['feet-inches', 'inches', 'mm', 'cm', 'm'] as const
  expect(styles.map((style) => measuresOf(style).run)).toEqual(['ft', 'ft', 'm', 'm', 'm'])
  expect(styles.map((style) => measuresOf(style).area)).toEqual([
    'sq ft',
    'sq ft',
    'sq m',
    'sq m',
    'sq m',
  ])
  expect(trimRuns([edge(null)], measuresOf('inches'))[0]!.printed).toBe('16.4 ft')
})
