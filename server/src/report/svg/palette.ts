/** What each part of a drawing is drawn in: whatever a renderer takes for a colour. */
export interface Palette {
  readonly ink: string
  readonly softInk: string
  readonly paper: string
  readonly wall: string
  readonly wallHatch: string
  /** A whole plank. */
  readonly board: string
  readonly cutGround: string
  readonly cutHatch: string
  readonly ripGround: string
  readonly ripStripe: string
  readonly joint: string
  readonly seam: string
  /** What stands on the floor. */
  readonly beside: string
  readonly trim: string
  readonly working: string
  /** A wall that is still to be read. */
  readonly unread: string
  readonly alarm: string
}

/** Print colours: ink on white paper, nothing that photocopies to black. */
export const PRINT: Palette = {
  ink: '#1f2a33',
  softInk: '#5c6873',
  paper: '#ffffff',
  wall: '#e4e1db',
  wallHatch: '#a8a297',
  board: '#fbf7ef',
  cutGround: '#f3f6f8',
  cutHatch: '#b4c2cc',
  ripGround: '#fbf1df',
  ripStripe: '#e6cd9f',
  joint: '#6f7a84',
  seam: '#b3aca0',
  beside: '#f4f4f2',
  trim: '#7a5a2e',
  working: '#1c5d99',
  unread: '#a9b1b8',
  alarm: '#b3261e',
}
