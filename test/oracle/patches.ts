import { type Closet, closetOf } from './closets.ts'
import type { Doorway, House, Placed } from './house.ts'
import type { Floor, Job, Kind, Place, Product, Thing } from './job.ts'
import { INCH, type Nm } from './lengths.ts'
import { outlineOf } from './outline.ts'
import { dividedOpening, passage } from './passages.ts'
import { type Patch, patch, type Side } from './patch.ts'
import { add, type Point, scaled } from './point.ts'
import { compare, minus, type Ratio, ratio, size, sum } from './ratio.ts'
import { areaWithin, rimOf } from './rim.ts'
import { ringOf } from './things.ts'

/**
 * Everything whose union is a floor's area. Where it lies over itself, as by a loop's misclosure, the two
 * halves of an opening in which it is parted end short of the middle.
 */
export function patchesOf(
  job: Job,
  house: House,
  floor: Floor,
  product: Product,
): readonly Patch[] {
  const patches = patchesFor(job, house, floor, product, false)
  const isParted = patches.some(({ sides }) => sides.some(({ isBreak }) => isBreak))
  return isParted && liesOverItself(patches)
    ? patchesFor(job, house, floor, product, true)
    : patches
}

function liesOverItself(patches: readonly Patch[]): boolean {
  const floor = patches.filter(({ isFloor }) => isFloor)
  const areas = floor.map(({ sides }) => size(areaWithin(sides)))
  return compare(sum(areas), areaWithin(rimOf(floor))) > 0
}

function patchesFor(
  job: Job,
  house: House,
  floor: Floor,
  product: Product,
  isShort: boolean,
): readonly Patch[] {
  const rooms = house.rooms.filter(({ shape }) => floor.rooms.includes(shape.room.key))
  const closets = house.rooms.flatMap((room) =>
    room.spots.filter(({ one }) => one.kind === 'closet').map((spot) => closetOf(job, room, spot)),
  )
  const laidClosets = closets.filter(({ key }) => floor.rooms.includes(key))
  return [
    ...rooms.map((room) => roomPatch(room, house, floor, product)),
    ...laidClosets.map(({ key, ring }) => closetPatch(key, ring, product)),
    ...closets.flatMap((closet) => throatPatches(closet, floor, product, isShort)),
    ...house.doorways.flatMap((doorway) => doorwayPatches(job, doorway, floor, product, isShort)),
    ...rooms.flatMap((room) => takenOut(room, product)),
  ]
}

function closetPatch(key: string, ring: readonly Point[], { gap }: Product): Patch {
  const { sides } = patch(ring, { gap, trim: key })
  return {
    isFloor: true,
    sides: sides.map((side, place) => ({ ...side, wall: { room: key, place } })),
  }
}

/** The floor in a closet's opening, its sides finished as wall. */
function throatPatches(
  closet: Closet,
  floor: Floor,
  product: Product,
  isShort: boolean,
): readonly Patch[] {
  const { key, room, throat, width } = closet
  const isHere = (place: Place) => 'from' in place && isBetween(place, room, key)
  const isIn = [floor.rooms.includes(room), floor.rooms.includes(key)] as const
  const isParted = isIn[0] && isIn[1] && (floor.breaks.some(isHere) || breaksAt(width, product))
  const end = endGap(floor.edges.find(isHere), product)
  return dividedOpening(throat, isIn, isParted, {
    sideGap: product.gap,
    endGap: end,
    isShort: isShort && isParted,
  })
}

/** Whether the product's run is parted by an opening so wide. */
function breaksAt(width: Ratio, { breaks }: Product): boolean {
  if (breaks === null) return false
  return breaks.under === null || compare(width, ratio(breaks.under)) < 0
}

/** What a transition leaves free. */
const END = (3n * INCH) / 8n

/** A room's outline, with what the floor meets at each wall. */
function roomPatch(room: Placed, house: House, floor: Floor, product: Product): Patch {
  const sides = outlineOf(room).map(({ from, to, place, alcove }): Side => {
    const own = alcove > 0 ? metInAlcove(room, place, product) : metAt(room, place, floor, product)
    const wall = own.wall === null ? null : { ...own.wall, place: place + alcove * ALCOVES }
    const beyond = alcove > 0 ? {} : metBeyond(room, place, house, floor, product)
    return { ...own, wall, from, to, ...beyond }
  })
  return { isFloor: true, sides }
}

/** Each side of an alcove is a wall of its own, numbered past those of the room. */
const ALCOVES = 1000

/** The gap along a wall, and whether base or shoe runs there. */
function metAt(
  room: Placed,
  place: number,
  floor: Floor,
  product: Product,
): Omit<Side, 'from' | 'to'> {
  const { key, walls, base } = room.shape.room
  const wall = walls[place]
  const line = floor.edges.find((edge) => isEdgeAt(edge, room, place))
  const unsaid: Kind | null = wall?.isStair ? 'open edge' : baseKind(base.fate)
  const kind = line?.kind ?? wall?.kind ?? unsaid
  const isStep = wall?.isStair || kind === 'nosing' || kind === 'open edge'
  const hasTrim = kind === null || kind === 'cabinet' || / base$|^base /.test(kind)
  return {
    gap: line?.gap ?? wall?.gap ?? gapOf(kind, product),
    trim: hasTrim && !isStep ? key : null,
    wall: wall?.isStair ? null : { room: key, place },
    isBreak: false,
  }
}

/** An alcove is finished as the room's base line says, whatever its wall is. */
function metInAlcove(
  { shape }: Placed,
  place: number,
  { gap }: Product,
): Omit<Side, 'from' | 'to'> {
  const { key } = shape.room
  return { gap, trim: key, wall: { room: key, place }, isBreak: false }
}

function baseKind(fate: 'kept' | 'off and back' | 'new' | 'none' | null): Kind | null {
  if (fate === null) return null
  return fate === 'none' ? 'no base' : `base ${fate}`
}

/** A side without a wall, where the run ends at the room beyond. */
function metBeyond(
  { spots }: Placed,
  place: number,
  house: House,
  floor: Floor,
  product: Product,
): Partial<Side> {
  const spot = spots.find(({ one, isOpenSide }) => isOpenSide && one.wall === place)
  const doorway = house.doorways.find(({ near, far }) => spot && (near === spot || far === spot))
  if (doorway === undefined || doorway.through > 0n) return {}
  const isInner = floor.rooms.includes(doorway.from) && floor.rooms.includes(doorway.to)
  const isBreak = isInner && isParted(doorway, floor, product)
  return isInner && !isBreak
    ? {}
    : { gap: endGap(lineAt(doorway, floor), product), trim: null, wall: null, isBreak }
}

/** What stays free where the run ends at an opening. */
function endGap(line: Floor['edges'][number] | undefined, product: Product): Nm {
  return line?.gap ?? (line?.kind ? gapOf(line.kind, product) : END)
}

/** An edge line names a wall of the room, or the stair or room that its side is open to. */
function isEdgeAt(edge: Place, { shape: { room } }: Placed, place: number): boolean {
  const wall = room.walls[place]
  if ('wall' in edge)
    return edge.room === room.key && (edge.wall === wall?.called || edge.wall === wall?.way)
  return edge.from === room.key && edge.to === 'stair' && wall?.isStair === true
}

function gapOf(kind: Kind | null, product: Product): Nm {
  if (kind === 'nosing' || kind === 'open edge') return 0n
  return kind === 'carpet' ? END : product.gap
}

/** The floor in an opening between rooms, or half of it where the run ends there. */
function doorwayPatches(
  job: Job,
  doorway: Doorway,
  floor: Floor,
  product: Product,
  isShort: boolean,
): readonly Patch[] {
  const { from, to, near } = doorway
  const isIn = [
    floor.rooms.includes(from),
    floor.rooms.includes(to) && doorway.beyond !== null,
  ] as const
  const line = lineAt(doorway, floor)
  const isSlider = line?.kind ? line.kind === 'slider' : near.one.isSliding && to === 'outside'
  const isInner = isIn[0] && isIn[1]
  if (isSlider && !isInner) return []
  const isEnd = !isInner || isParted(doorway, floor, product)
  if (isEnd && doorway.through === 0n) return []
  const isOutsideSlider = near.one.isSliding && to === 'outside'
  const isFinished = near.one.kind === 'pass-through' || near.isOpenSide || isOutsideSlider
  return dividedOpening(passage(doorway, isFinished ? 0n : job.jambs), isIn, isEnd, {
    sideGap: isFinished ? product.gap : 0n,
    endGap: endGap(line, product),
    isShort: isShort && isInner,
  })
}

function isParted(doorway: Doorway, floor: Floor, product: Product): boolean {
  const { from, to, isOpenSide } = doorway.near
  return (
    floor.breaks.some((place) => isOpening(place, doorway)) ||
    (!isOpenSide && breaksAt(minus(to, from), product))
  )
}

/** The floor's edge line for an opening. */
const lineAt = (doorway: Doorway, floor: Floor) =>
  floor.edges.find((edge) => isOpening(edge, doorway))

function isOpening(place: Place, { from, to, near, far }: Doorway): boolean {
  if ('wall' in place || !isBetween(place, from, to)) return false
  return place.called === null || [near.one.called, far?.one.called].includes(place.called)
}

const isBetween = (place: { readonly from: string; readonly to: string }, a: string, b: string) =>
  (place.from === a && place.to === b) || (place.from === b && place.to === a)

/** Things that stand in the room, and hearths against its walls. */
function takenOut(room: Placed, product: Product): readonly Patch[] {
  const hearths = room.spots
    .filter(({ one }) => one.kind === 'hearth')
    .map(({ one, left, right, face }) => {
      const deep = scaled(face.out, ratio(-(one.deep ?? 0n)))
      return patch(
        [left, right, add(right, deep), add(left, deep)],
        { gap: one.gap ?? product.gap },
        false,
      )
    })
  const things = room.shape.room.things.map((thing) =>
    patch(ringOf(room.shape, thing), { gap: thing.gap ?? thingGap(thing, product) }, false),
  )
  return [...hearths, ...things]
}

const thingGap = ({ kind }: Thing, { gap }: Product): Nm => (kind === 'stairwell' ? 0n : gap)
