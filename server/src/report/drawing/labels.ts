import type { Point, Ring } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { roundToNm } from '../../units/round.ts'
import { areaText } from '../area-text.ts'
import type { Label, Lettering, Tone } from '../scene.ts'
import { isFourSided } from './dimensions.ts'
import { groundOf, letter, widthOf } from './letter.ts'
import { holderOf, type Occupied } from './occupied.ts'
import {
  direction,
  distance,
  EAST,
  extent,
  left,
  middle,
  moved,
  plate,
  readable,
} from './vector.ts'

export interface LabelOptions {
  readonly units: UnitStyle
  readonly em: Nm
  readonly taken: Occupied
}

/** Each room's name and area, each closet's name, in the clearest place inside it. */
export function labels(rooms: readonly SurveyedRoom[], options: LabelOptions): Label[] {
  return rooms.flatMap((room) => {
    const own = label(room.outline, `${room.room.name.key}: label`, room, [
      { text: room.room.name.text, part: 1.05, tone: 'heading' },
      ...sizeSaid(room, options.units),
      { text: areaText([room.outline], options.units), part: 0.8, tone: 'quiet' },
    ])
    const closets = room.closets.map((closet) =>
      label(closet.outline, `${closet.name}: label`, room, [
        { text: closet.name.replace(`${room.room.name.text} `, ''), part: 0.7, tone: 'plain' },
      ]),
    )
    return [own, ...closets].flatMap((build) => build(options) ?? [])
  })
}

/** "12' 4" × 10' 8 1/4"", as read along the first two walls of a four-sided room. */
function sizeSaid(room: SurveyedRoom, units: UnitStyle): LineSaid[] {
  const [first, second] = room.room.walls.map((wall) => wall.reading.nm)
  if (!isFourSided(room) || first == null || second == null) return []
  const text = `${printLength(first, units)} × ${printLength(second, units)}`
  return [{ text, part: 0.8, tone: 'plain' }]
}

/** What lies behind an opening where the drawing ends, set just outside it: "to landing", "stair down". */
export function beyondLabels(
  rooms: readonly SurveyedRoom[],
  doorways: readonly Doorway[],
  {
    em,
    taken,
    house,
    thickness,
  }: LabelOptions & { readonly house: Occupied; readonly thickness: Nm },
): Label[] {
  const drawn = new Set(rooms.map((room) => room.room.name.key))
  const doors = doorways
    .filter((doorway) => doorway.to === null || !drawn.has(doorway.to))
    .map(({ opening, near, far, to, toText, label }) => ({
      id: `${label}: beyond`,
      span: opening.span,
      at: middle(...far),
      outward: left(direction(...near)),
      text: to === null || to === 'outside' ? 'outside' : `to ${toText}`,
    }))
  return [...doors, ...rooms.flatMap((room) => steps(room, thickness))].flatMap((one) => {
    const height = Math.floor(em * 0.66)
    for (const away of [0.7, 1.9, 3.1, 4.4]) {
      const along = readable(left(one.outward))
      const line = letter(one.text, moved(one.at, one.outward, em * away), height, {
        along,
        tone: 'quiet',
      })
      const ground = groundOf(line)
      if (taken.hits(ground) || house.hits(ground)) continue
      taken.add(ground)
      return [{ kind: 'label', id: one.id, span: one.span, plate: ground, lines: [line] }]
    }
    return []
  })
}

/** Sides that end at a step, seen from where a wall's outer face would be. */
function steps(room: SurveyedRoom, thickness: Nm) {
  return room.room.walls.flatMap((wall) => {
    const [from, to] = [room.corners[wall.index], room.corners[wall.index + 1] ?? room.corners[0]]
    if (wall.stair === null || from === undefined || to === undefined) return []
    const outward = left(direction(from, to))
    return [
      {
        id: `${room.room.name.key}: step ${wall.index}`,
        span: wall.span,
        at: moved(middle(from, to), outward, thickness),
        outward,
        text: `stair ${wall.stair}`,
      },
    ]
  })
}

interface LineSaid {
  readonly text: string
  /** Height as a part of plain lettering. */
  readonly part: number
  readonly tone: Tone
}

function label(ring: Ring, id: string, room: SurveyedRoom, said: readonly LineSaid[]) {
  return (options: LabelOptions): Label | null => {
    if (ring.length < 3) return null
    const isInside = holderOf(ring)
    for (const scale of [1, 0.85, 0.7]) {
      const size = sizeOf(said, options.em * scale)
      const at = clearest(ring, size, { ...options, isInside })
      if (at === null) continue
      const ground = plate(at, EAST, size.width, size.height)
      options.taken.add(ground)
      const lines = stacked(said, at, size.height, options.em * scale)
      return { kind: 'label', id, span: room.room.name.span, plate: ground, lines }
    }
    return null
  }
}

const LINE_PITCH = 1.3

function sizeOf(said: readonly LineSaid[], em: number): { width: Nm; height: Nm } {
  const widths = said.map((line) => widthOf(line.text, Math.floor(em * line.part)))
  const height = said.reduce((sum, line) => sum + line.part * LINE_PITCH, 0.3)
  return { width: roundToNm(Math.max(...widths) + em * 0.8), height: roundToNm(em * height) }
}

function stacked(said: readonly LineSaid[], at: Point, height: Nm, em: number): Lettering[] {
  let top = at.y + height / 2 - em * 0.15
  return said.map(({ text, part, tone }) => {
    const pitch = em * part * LINE_PITCH
    top -= pitch
    const y = roundToNm(top + pitch / 2)
    return letter(text, { x: at.x, y }, Math.floor(em * part), { tone })
  })
}

const GRID = 24

/** The place nearest the middle where the label lies inside the ring and clear of what is there. */
function clearest(
  ring: Ring,
  size: { readonly width: Nm; readonly height: Nm },
  { taken, isInside }: LabelOptions & { readonly isInside: (point: Point) => boolean },
): Point | null {
  const { low, high } = extent(ring)
  const centre = { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 }
  let best: { readonly at: Point; readonly away: number } | null = null
  for (let i = 1; i < GRID; i += 1) {
    for (let j = 1; j < GRID; j += 1) {
      const x = roundToNm(low.x + ((high.x - low.x) * i) / GRID)
      const y = roundToNm(low.y + ((high.y - low.y) * j) / GRID)
      const away = distance(centre, { x, y })
      if (best !== null && away >= best.away) continue
      const ground = plate({ x, y }, EAST, size.width, size.height)
      if (!ground.every(isInside) || taken.hits(ground)) continue
      best = { at: { x, y }, away }
    }
  }
  return best?.at ?? null
}
