import type { Palette } from '../../server/src/report/svg/palette.ts'

/** The drawing's inks as the style sheet makes them from the colours of the editor's theme. */
export const SCREEN: Palette = {
  ink: 'var(--ink)',
  softInk: 'var(--soft-ink)',
  paper: 'var(--paper)',
  wall: 'var(--wall)',
  wallHatch: 'var(--wall-hatch)',
  board: 'var(--board)',
  cutGround: 'var(--cut-ground)',
  cutHatch: 'var(--cut-hatch)',
  ripGround: 'var(--rip-ground)',
  ripStripe: 'var(--rip-stripe)',
  joint: 'var(--joint)',
  seam: 'var(--seam)',
  beside: 'var(--beside)',
  trim: 'var(--trim)',
  working: 'var(--working)',
  unread: 'var(--unread)',
  alarm: 'var(--alarm)',
}
