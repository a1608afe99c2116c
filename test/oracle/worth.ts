import type { Base, Job, Plane, Room, Tape } from './job.ts'
import { INCH, type Nm } from './lengths.ts'
import type { Reading } from './phrases.ts'
import { over, plus, type Ratio, ratio, root, round, sum, times } from './ratio.ts'

/** A length that counts, and the variance (σ²) of what was read. */
export interface Taken {
  readonly length: Ratio
  readonly variance: Ratio
}

/** What one reading is worth: one standard deviation, in whole nanometres. */
export function worthOf({ length, within, isAbout }: Reading, tape: Tape): Nm {
  if (within !== null) return within
  if (isAbout) return tape.about ?? INCH / 4n
  const long = length ?? 0n
  if (tape.plus === null) return INCH / 16n + round(ratio(long, 10_000n))
  return tape.plus + round(ratio(long * tape.more, tape.per))
}

/** Readings of one thing: their mean, each weighted by 1 ÷ σ²; null where one is still to be taken. */
export function taken(readings: readonly Reading[], tape: Tape): Taken | null {
  const read = readings.flatMap((reading) => {
    if (reading.length === null) return []
    const worth = worthOf(reading, tape)
    return [{ length: ratio(reading.length), weight: ratio(1n, worth * worth) }]
  })
  if (read.length === 0 || read.length < readings.length) return null
  const weight = sum(read.map((one) => one.weight))
  const weighted = sum(read.map((one) => times(one.length, one.weight)))
  return { length: over(weighted, weight), variance: over(ratio(1n), weight) }
}

/** What so many independent readings may come to together: twice the root of the sum of their σ². */
export function allowance(variances: readonly Ratio[]): Nm {
  return round(times(ratio(2n), root(sum(variances))))
}

/** What the tape touched where a reading does not say it. */
export function usualPlane({ tape, base }: Room): Plane {
  return tape.touching ?? (base.fate === 'kept' ? 'base' : 'wall')
}

/** The plane to which a room is drawn: what most of its walls were read to, of two alike the earlier. */
export function drawnPlane(room: Room): Plane {
  const planes = room.walls.map(({ touching }) => touching ?? usualPlane(room))
  const count = (plane: Plane) => planes.filter((one) => one === plane).length
  return planes.reduce(
    (best, plane) => (count(plane) > count(best) ? plane : best),
    planes[0] ?? 'wall',
  )
}

/** How far the floor's rim lies outside what the room is drawn to (below nothing: inside). */
export function rimOutside(room: Room): Nm {
  const [thick, drawn] = [room.base.thick ?? 0n, drawnPlane(room)]
  if (room.base.fate === null) return 0n
  const isRimAtBase = room.base.fate === 'kept'
  if (drawn === 'base' && !isRimAtBase) return thick
  return drawn === 'wall' && isRimAtBase ? -thick : 0n
}

/** A kept base stands off the wall by its thickness, and the floor ends at it. */
export function standsOff({ base }: { readonly base: Base }): Nm {
  return base.fate === 'kept' ? (base.thick ?? 0n) : 0n
}

/** The first said of a thickness; a job that says none has walls of no thickness. */
export function thickness(job: Job, ...said: readonly (Nm | null | undefined)[]): Nm {
  return said.find((one) => one != null) ?? job.thick ?? 0n
}

export const addUp = (a: Taken, b: Taken): Taken => ({
  length: plus(a.length, b.length),
  variance: plus(a.variance, b.variance),
})
