import { bandsOf } from '../geometry/bands.ts'
import { boxes } from '../geometry/boxes.ts'
import { contactsAlong } from '../geometry/contacts.ts'
import { healed } from '../geometry/heal.ts'
import { outlinesOf, type Part } from '../geometry/outline.ts'
import type { Region } from '../geometry/point.ts'
import { type Box, boxOf } from '../geometry/ring.ts'
import { cutLevel } from '../geometry/split.ts'
import type { Nm } from '../units/length.ts'
import type { Course, PlankRules, Problem, SetOut, Stretch } from './problem.ts'
import type { PublishedZone } from './published.ts'
import { ontoSeams, seamsOver } from './seams.ts'
import { inZones } from './zones.ts'

/** A floor cut into courses: the problem for the planner, and the shapes behind it. */
export interface CutFloor {
  readonly problem: Problem
  /** What is laid, in the frame of the run, with corners that all but lay on a seam moved onto it. */
  readonly area: Region
  /** The shape of each stretch, by its id. */
  readonly parts: readonly Part[]
  readonly zones: readonly PublishedZone[]
}

/**
 * Cuts what the planks cover (in the frame of the run) into courses and their stretches. Stretches are
 * numbered from 0 by course, then from left to right.
 */
export function problemOf(
  net: Region,
  setOut: SetOut,
  rules: PlankRules,
  zones: readonly PublishedZone[],
): CutFloor {
  const area = healed(ontoSeams(net, setOut.seam, rules.width))
  const seams = seamsOver(area, setOut.seam, rules.width)
  const slabs = cutLevel(outlinesOf(area), seams).slice(1, -1).map(leftToRight)
  const zonesIn = finderOf(zones)
  const firstIds: number[] = [0]
  for (const slab of slabs) firstIds.push(firstIds.at(-1)! + slab.length)
  return {
    problem: {
      courses: coursesOf(seams, setOut),
      stretches: slabs.flatMap((slab, i) =>
        slab.map((part, k) => stretchOf(part, firstIds[i]! + k, i + 1, zonesIn)),
      ),
      contacts: slabs.slice(1).flatMap((above, i) =>
        contactsAlong(slabs[i]!, above, seams[i + 1]!).map((contact) => ({
          below: firstIds[i]! + contact.below,
          above: firstIds[i + 1]! + contact.above,
          from: contact.from,
          to: contact.to,
        })),
      ),
      rules,
    },
    area,
    parts: slabs.flat(),
    zones,
  }
}

/** Finds the zones that meet a box. */
function finderOf(zones: readonly PublishedZone[]): (box: Box) => readonly PublishedZone[] {
  const found = boxes<PublishedZone>()
  for (const zone of zones)
    found.add(zone, { west: zone.from, east: zone.to, south: zone.low, north: zone.high })
  return (box) => {
    const near = new Set<PublishedZone>()
    found.some(box, (zone) => {
      near.add(zone)
      return false
    })
    return [...near]
  }
}

function leftToRight(slab: readonly Part[]): Part[] {
  return slab
    .map((part) => ({ part, box: boxOf(part.rim.points) }))
    .sort((a, b) => a.box.west - b.box.west || a.box.south - b.box.south || a.box.east - b.box.east)
    .map(({ part }) => part)
}

/** The start course first, those beyond it outward, then those behind it, backwards. */
function coursesOf(seams: readonly Nm[], { start, onward }: SetOut): Course[] {
  const count = Math.max(0, seams.length - 1)
  const below = seams.filter((seam) => (onward === 'up' ? seam <= start : seam < start)).length - 1
  const first = Math.max(0, Math.min(count - 1, below))
  return Array.from({ length: count }, (_, i) => ({
    course: i + 1,
    low: seams[i]!,
    high: seams[i + 1]!,
    order:
      onward === 'up' ? orderOf(i, first, count) : orderOf(count - 1 - i, count - 1 - first, count),
  }))
}

function orderOf(i: number, first: number, count: number): number {
  return i >= first ? i - first + 1 : count - i
}

function stretchOf(
  part: Part,
  id: number,
  course: number,
  zonesIn: (box: Box) => readonly PublishedZone[],
): Stretch {
  const box = boxOf(part.rim.points)
  const bands = bandsOf(part)
  return {
    id,
    course,
    from: box.west,
    to: box.east,
    area: areaOf(part),
    bands,
    posts: part.holes.map(({ points }) => {
      const box = boxOf(points)
      return { from: box.west, to: box.east }
    }),
    doorways: inZones(bands, zonesIn(box)),
  }
}

/** By trapezoids from its lower left corner, so that the products stay small and hardly round. */
function areaOf({ rim, holes }: Part): number {
  const { west, south } = boxOf(rim.points)
  const twice = [rim, ...holes].flatMap(({ points }) =>
    points.map((from, i) => {
      const to = points[(i + 1) % points.length]!
      return (from.x - west) * (to.y - south) - (to.x - west) * (from.y - south)
    }),
  )
  return twice.reduce((sum, each) => sum + each, 0) / 2
}
