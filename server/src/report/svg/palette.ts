/** Print colours: ink on white paper, nothing that photocopies to black. */
export const INK = '#1f2a33'
export const SOFT_INK = '#5c6873'
export const PAPER = '#ffffff'
export const WALL = '#e4e1db'
export const WALL_HATCH = '#a8a297'
export const BOARD = '#fbf7ef'
export const CUT_GROUND = '#f3f6f8'
export const CUT_HATCH = '#b4c2cc'
export const RIP_GROUND = '#fbf1df'
export const RIP_STRIPE = '#e6cd9f'
export const JOINT = '#6f7a84'
export const SEAM = '#b3aca0'
export const BESIDE = '#f4f4f2'
export const TRIM = '#7a5a2e'
export const WORKING = '#1c5d99'
export const UNREAD = '#a9b1b8'
export const ALARM = '#b3261e'

/** Line weights as hundredths of the plain lettering's height. */
export const HAIRLINE = 4
export const THIN = 6
export const MEDIUM = 10
export const HEAVY = 18
