import { type Made, madeAgain, type Shelf } from '../facts/kept.ts'
import { canonicalEdges } from '../geometry/canonical.ts'
import { turn } from '../geometry/exact.ts'
import { join } from '../geometry/join.ts'
import type { Floor, Job } from '../job/job.ts'
import type { Survey } from '../survey/survey.ts'
import { floorMessages } from './area-messages.ts'
import { type AreaParts, areaParts, concernedBy } from './area-parts.ts'
import type { Edge } from './area-scope.ts'
import type { FloorArea, RimEdge } from './floor-area.ts'

/**
 * The floor of one floor statement in plan axes: its rooms and closets, the floor in the openings
 * between them, and half the opening where another floor begins, less what stands on it. Rooms without
 * a shape are left out, said so, and make it incomplete. Never throws.
 */
export function floorArea(job: Job, survey: Survey, floor: Floor, kept?: AreasKept): FloorArea {
  const concerned = concernedBy(job, survey, floor)
  const given = [
    ...[job.units, job.jambsUnder.value, concerned.product],
    ...concerned.rooms.map(({ room }) => room),
    // Rooms and closets may change places in the list: one kind ends here.
    null,
    ...concerned.closets.map(({ closet }) => closet),
    ...concerned.passages,
  ]
  return madeAgain(kept, floor, given, () => areaOf(job, floor, areaParts(job, floor, concerned)))
}

/** Areas of earlier runs. */
export type AreasKept = Shelf<Floor, Made<FloorArea>>

function areaOf(job: Job, floor: Floor, parts: AreaParts): FloorArea {
  const joined = join(parts.solids, parts.holes, ({ facts }) => facts.parts)
  const rings = canonicalEdges(joined.map(inFewestEdges).filter((ring) => ring.length > 2)).map(
    (ring) => ring.map(rimEdge),
  )
  return {
    gross: rings.map((ring) => ring.map(({ from }) => from)),
    rings,
    rim: rings.flat(),
    transitions: parts.transitions,
    rooms: parts.rooms,
    doorways: parts.doorways,
    jambSides: parts.jambSides,
    complete: isComplete(parts, floor),
    messages: floorMessages(floor, parts, rings.flat(), job.units),
  }
}

function isComplete(parts: AreaParts, floor: Floor): boolean {
  return !floor.broken && parts.missing.length === 0 && parts.rooms.length === floor.rooms.length
}

/** Edges in one line that say the same become one. */
function inFewestEdges(ring: readonly Edge[]): Edge[] {
  const merged: Edge[] = []
  for (const edge of ring) {
    const before = merged.at(-1)
    if (before && goesOn(before, edge)) merged[merged.length - 1] = { ...before, to: edge.to }
    else merged.push(edge)
  }
  const first = merged[0]!
  const last = merged.at(-1)!
  if (!goesOn(last, first)) return merged
  return [{ ...first, from: last.from }, ...merged.slice(1, -1)]
}

function goesOn(before: Edge, after: Edge): boolean {
  return before.facts === after.facts && turn(before.from, before.to, after.to) === 0
}

function rimEdge({ from, to, facts }: Edge): RimEdge {
  const { parts: _, ...said } = facts
  return { from, to, ...said }
}
