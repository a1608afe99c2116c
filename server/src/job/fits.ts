import { type Message, message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
import type { Binding } from './binding.ts'
import { digitSlips, type Slip } from './digit-slips.ts'
import type { OnWall, Reading, Wall } from './job.ts'
import { markSlips } from './mark-slips.ts'
import { allOf, numberWord } from './sentence.ts'

/** An opening or a recess on its wall. */
export interface OnWallThing {
  readonly kind: string
  readonly label: string
  readonly place: OnWall | null
  readonly span: Span
}

/**
 * Whether everything on the walls lies within its wall and beside its neighbours, as far as the
 * readings tell. A little over is no slip: twice the root of the sum of the squared worths is allowed,
 * as for a closing error.
 */
export function sayWhatDoesNotFit(
  walls: readonly Wall[],
  things: readonly OnWallThing[],
  binding: Binding,
): void {
  const byWall = Map.groupBy(things, (thing) => thing.place?.wall ?? null)
  for (const wall of walls) {
    const here = (byWall.get(wall.index) ?? []).flatMap((thing) => stretchOf(thing, wall))
    const { inside = [], outside = [] } = Object.groupBy(here, (stretch) =>
      isOutside(stretch, wall) ? 'outside' : 'inside',
    )
    if (outside.length > 1) binding.say(severalDoNotFit(outside, wall, binding))
    else for (const stretch of outside) binding.say(doesNotFit(stretch, wall, binding))
    sayOverlaps(inside, wall, binding)
  }
}

/** What a thing covers of its wall. */
interface Stretch {
  readonly thing: OnWallThing
  readonly place: OnWall
  /** From the wall's left end; null where the wall is not read and the place counts from the right. */
  readonly left: Nm | null
  readonly right: Nm | null
  /** Its far side, counted from the end that it was read from. */
  readonly end: Nm
}

function stretchOf(thing: OnWallThing, wall: Wall): readonly Stretch[] {
  const { place } = thing
  if (place === null) return []
  const [distance, width] = [place.distance.nm, place.width.nm]
  const end = place.far === null ? sumOf(distance, width) : place.far.nm
  if (distance === null || end === null) return []
  if (place.from === 'left') return [{ thing, place, left: distance, right: end, end }]
  const whole = wall.reading.nm
  const [left, right] = whole === null ? [null, null] : [whole - end, whole - distance]
  return [{ thing, place, left, right, end }]
}

function sumOf(a: Nm | null, b: Nm | null): Nm | null {
  return a === null || b === null ? null : a + b
}

function isOutside({ place, end }: Stretch, wall: Wall): boolean {
  const whole = wall.reading.nm
  return (
    whole !== null && end > whole + slack([wall.reading, place.distance, place.far ?? place.width])
  )
}

function slack(readings: readonly Reading[]): Nm {
  return 2 * Math.sqrt(readings.reduce((sum, { sigma }) => sum + sigma * sigma, 0))
}

function doesNotFit(stretch: Stretch, wall: Wall, binding: Binding): Message {
  const { thing, place, end } = stretch
  const from = place.from === 'left' ? '' : ', counted from the right'
  const ends = `${wall.label} ends at ${binding.length(wall.reading.nm!)}`
  const said = `This ${thing.kind} would end at ${binding.length(end)}${from}, but ${ends}.`
  const slips = likelySlips(stretch, wall, binding)
  const text = `${said} ${askOf(slips)}`
  const fixes = slips.map((slip) => ({
    title: `Write ${slip.text}`,
    edits: [{ span: slip.reading.span, text: slip.text }],
  }))
  const related = [{ span: wall.span, text: `The wall was read ${wall.reading.text}.` }]
  return message('error', 'opening-does-not-fit', place.distance.span, text, { related, fixes })
}

/** `30" fits: inches, not feet? So does 3': a 0 too many?` */
function askOf([first, other]: readonly Slip[]): string {
  if (first === undefined) return 'Check its place, its width and the wall.'
  const also = other === undefined ? '' : ` So does ${other.text}: ${other.asks}`
  return `${first.text} fits: ${first.asks}${also}`
}

/** Where several things end past their wall, the wall is the likely slip. */
function severalDoNotFit(
  stretches: readonly Stretch[],
  { label, reading, span }: Wall,
  binding: Binding,
): Message {
  const things = stretches.map(({ thing, place, end }) => {
    const from = place.from === 'left' ? '' : ' from the right'
    return `the ${thing.label} at ${binding.length(end)}${from}`
  })
  const text =
    `${label} was read ${reading.text}, and ${numberWord(stretches.length).toLowerCase()} things on it end ` +
    `past that: ${allOf(things)}. Take the wall again, and then where they stand.`
  const related = stretches.map(({ thing }) => ({
    span: thing.span,
    text: `${thing.label} ends past it.`,
  }))
  return message('error', 'opening-does-not-fit', reading.span ?? span, text, { related })
}

/** Nothing that is read as an opening is narrower. */
const NARROWEST: Nm = 6 * NM_PER_INCH

/** What one slip makes of a reading of the line. */
type LineSlip = Slip & { readonly reading: Reading }

/** Of the wrong marks and of the wrong digits the first that brings the line back onto its wall, if put right. */
function likelySlips({ place }: Stretch, wall: Wall, binding: Binding): readonly LineSlip[] {
  const [near, far] = [place.distance, place.far ?? place.width]
  const fits = (distance: Nm, other: Nm): boolean => {
    const width = place.far === null ? other : other - distance
    return distance + width <= wall.reading.nm! && width >= NARROWEST
  }
  const readings = place.far === null ? [near, far] : [far]
  return [markSlips, digitSlips].flatMap((slipsOf) => {
    const slips = readings.flatMap((reading) =>
      slipsOf(reading.text, binding.tape(reading.span.file)).map((slip) => ({ ...slip, reading })),
    )
    const found = slips.find(({ reading, nm }) =>
      reading === near ? fits(nm, far.nm!) : fits(near.nm!, nm),
    )
    return found === undefined ? [] : [found]
  })
}

function sayOverlaps(here: readonly Stretch[], wall: Wall, binding: Binding): void {
  const known = here.filter((stretch) => stretch.left !== null && stretch.right !== null)
  const inOrder = [...known].sort((a, b) => a.left! - b.left!)
  let reach = inOrder[0]
  for (const next of inOrder.slice(1)) {
    const over = reach!.right! - next.left!
    const allowed = slack([wall.reading, ...readingsOf(reach!), ...readingsOf(next)])
    if (over > allowed) binding.say(overlap(reach!, next, wall, over, binding))
    if (next.right! > reach!.right!) reach = next
  }
}

function readingsOf({ place }: Stretch): readonly Reading[] {
  return [place.distance, place.far ?? place.width]
}

function overlap(one: Stretch, other: Stretch, wall: Wall, over: Nm, binding: Binding): Message {
  const [first, second] =
    one.thing.span.start <= other.thing.span.start
      ? [one.thing, other.thing]
      : [other.thing, one.thing]
  const shared = Math.min(over, other.right! - other.left!)
  const text =
    `${second.label} and ${first.label} on ${binding.place(first.span, second.span)} lie over each other ` +
    `by ${binding.length(shared)} of ${wall.label}. Check where they stand and how wide they are.`
  const related = [{ span: first.span, text: 'The other one.' }]
  return message('error', 'openings-overlap', second.span, text, { related })
}
