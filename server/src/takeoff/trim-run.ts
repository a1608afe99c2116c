import { COMMON_PRACTICE } from '../facts/source.ts'
import type { Point } from '../geometry/point.ts'
import type { RimEdge } from '../layout/floor-area.ts'
import { printDecimal } from '../units/decimal.ts'
import { roundToNm } from '../units/round.ts'
import { type Measures, runOf } from './amount.ts'
import { given, quantity } from './quantity.ts'
import { summingTo } from './summing.ts'
import type { Quantity } from './takeoff.ts'

/** At a wall and yet without base or shoe: what has a trim of its own. */
const WITHOUT_BASE: readonly string[] = ['tub', 'hearth', 'slider', 'nosing', 'open edge', 'carpet']

/** Perimeter less openings, for base or shoe: each room, then all. */
export function trimRuns(rim: readonly RimEdge[], measures: Measures): readonly Quantity[] {
  const byRoom = new Map<string, RimEdge[]>()
  for (const edge of rim) {
    if (edge.wall === null || (edge.kind !== null && WITHOUT_BASE.includes(edge.kind))) continue
    const edges = byRoom.get(edge.room) ?? []
    edges.push(edge)
    byRoom.set(edge.room, edges)
  }
  const rooms = [...byRoom].map(([room, edges]) => roomRun(room, edges, measures))
  const all = [...byRoom.values()].flat()
  const total = quantity(
    { key: 'trim run', label: 'perimeter less openings', unit: measures.run },
    runOf(totalLength(all), measures),
    {
      formula: 'sum over the rooms',
      inputs: rooms.map((room) => room.derivation),
      rule: 'base or shoe along walls; nothing added for mitres or waste',
      source: COMMON_PRACTICE,
    },
  )
  return [...summingTo(runOf(totalLength(all), measures), rooms), total]
}

function roomRun(room: string, edges: readonly RimEdge[], measures: Measures): Quantity {
  return quantity(
    { key: 'trim run', label: `perimeter of ${room} less openings`, unit: measures.run },
    runOf(totalLength(edges), measures),
    {
      formula: 'sum of the wall stretches',
      inputs: edges.map((edge) =>
        given(
          edge.label,
          `${printDecimal(runOf(lengthOf(edge.from, edge.to), measures), 2)} ${measures.run}`,
          { span: edge.span },
        ),
      ),
      room,
    },
  )
}

function totalLength(edges: readonly RimEdge[]): bigint {
  return edges.reduce((sum, edge) => sum + lengthOf(edge.from, edge.to), 0n)
}

/** Rounded once to whole nanometres, half to even. */
function lengthOf(a: Point, b: Point): bigint {
  const dx = b.x - a.x
  const dy = b.y - a.y
  return BigInt(roundToNm(Math.sqrt(dx * dx + dy * dy)))
}
