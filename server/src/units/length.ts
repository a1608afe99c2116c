/**
 * A length in whole nanometres. 1/64 in is 396 875 nm and 0.1 mm is 100 000 nm, so every reading off
 * a tape is exact; a JavaScript number holds whole nanometres exactly up to nine thousand kilometres.
 */
export type Nm = number

export const NM_PER_INCH: Nm = 25_400_000
export const NM_PER_FOOT: Nm = 12 * NM_PER_INCH
export const NM_PER_MM: Nm = 1_000_000
export const NM_PER_CM: Nm = 10 * NM_PER_MM
export const NM_PER_M: Nm = 1000 * NM_PER_MM
/** The finest tape mark that is read: 1/64 in. */
export const NM_PER_64TH: Nm = NM_PER_INCH / 64

/** What the job's `units` line says lengths are printed in. */
export type UnitStyle = 'feet-inches' | 'inches' | 'mm' | 'cm' | 'm'
