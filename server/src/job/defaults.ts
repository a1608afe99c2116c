import { COMMON_PRACTICE, type Source } from '../facts/source.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
import { type Ratio, ratio } from '../units/ratio.ts'

/** A value that stands where no line gives one, and where it comes from. */
export interface Default<T> {
  readonly value: T
  readonly source: Source
}

const usual = <T>(value: T): Default<T> => ({ value, source: COMMON_PRACTICE })

/** The floor runs 1/2 to 5/8 in under each undercut jamb. */
export const JAMBS_UNDER: Default<Nm> = usual(NM_PER_INCH / 2)
/** Rooms, closets and halls: 8 to 12 %, 10 % usual. */
export const ALLOWANCE: Default<Ratio> = usual(ratio(10))
/** The pile of waiting offcuts is small. */
export const PILE: Default<{ readonly pieces: number; readonly courses: number }> = usual({
  pieces: 8,
  courses: 6,
})
/** 2 in, better half a plank. */
export const NARROWEST_RIP: Default<Nm> = usual(2 * NM_PER_INCH)
/** An end piece is cut to the wall found that day: 1/4 in to spare. */
export const TO_SPARE: Default<Nm> = usual(NM_PER_INCH / 4)
/** At least 2 planks of a product are spoiled. */
export const LEAST_SPOIL: Default<number> = usual(2)

/** What a cut takes: of a rip (along) and of a cross cut (across). */
export interface Kerfs {
  readonly along: Nm
  readonly across: Nm
}

/**
 * By the way of cutting: a full saw takes 1/8 in; score and snap, guillotine and knife take nothing.
 * A guillotine only cuts across, so its rips are sawn.
 */
export const KERFS: ReadonlyMap<string, Default<Kerfs>> = new Map([
  ['saw', usual({ along: NM_PER_INCH / 8, across: NM_PER_INCH / 8 })],
  ['score and snap', usual({ along: 0, across: 0 })],
  ['guillotine', usual({ along: NM_PER_INCH / 8, across: 0 })],
  ['knife', usual({ along: 0, across: 0 })],
])
/** Where no way of cutting is named the wider cut is allowed for. */
export const KERF_UNSAID: Default<Kerfs> = KERFS.get('saw')!
