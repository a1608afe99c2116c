import type { Span } from '../../facts/span.ts'
import type { FloorArea } from '../../layout/floor-area.ts'
import type { PublishedFloor } from '../../layout/published.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import type { UnitStyle } from '../../units/length.ts'

/** What is to be drawn: the survey, the floors laid on it, and what the title block says. */
export interface Subject {
  readonly title: string
  /** Lines under the title: site, date, revision. */
  readonly subtitles: readonly string[]
  readonly units: UnitStyle
  readonly rooms: readonly SurveyedRoom[]
  readonly doorways: readonly Doorway[]
  readonly floors: readonly SubjectFloor[]
  /** Why no count on this drawing is final; empty when all is there. */
  readonly incompleteBecause: readonly string[]
}

export interface SubjectFloor {
  readonly published: PublishedFloor
  /** For the trim at its rim; null where only the published layout is at hand. */
  readonly area: FloorArea | null
  /** The text that it was laid from; null where only the published layout is at hand. */
  readonly span: Span | null
  /** Keys of its rooms. */
  readonly rooms: readonly string[]
}
