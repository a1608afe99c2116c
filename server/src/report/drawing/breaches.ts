import type { PublishedFloor } from '../../layout/published.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'
import { breachText } from '../breach-text.ts'
import type { BreachMark } from '../scene.ts'
import type { RunFrame } from './run-frame.ts'
import type { SubjectFloor } from './subject.ts'

export interface BreachOptions {
  readonly frame: RunFrame
  readonly units: UnitStyle
  readonly em: Nm
}

/** Of the mark in every scene; breaches count from 0 as they are published. */
export function breachId({ floor }: PublishedFloor, breach: number): string {
  return `${floor}: breach ${breach + 1}`
}

/** A mark at each place where a rule of the product is not met. */
export function breachMarks(
  { published, span }: SubjectFloor,
  { frame, units, em }: BreachOptions,
): BreachMark[] {
  return published.breaches.map((breach, i) => ({
    kind: 'breach',
    id: breachId(published, i),
    span,
    rule: breach.rule,
    at: frame.place(...breach.at),
    radius: roundToNm(em * 0.5),
    title: breachText(breach, units),
  }))
}
