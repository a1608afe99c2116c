import type { Compiled } from './compiled.ts'
import type { Subject } from './drawing/subject.ts'

/** Of a job that is not counted yet, `floors` are none. */
type ToDraw = Pick<Compiled, 'job' | 'survey' | 'floors'> & {
  readonly takeoff: Pick<Compiled['takeoff'], 'incompleteBecause'>
}

/** What a job's plan shows: all its floors on one sheet. */
export function subjectOf({ job, survey, floors, takeoff }: ToDraw): Subject {
  const lines = [job.site, job.date, job.revision === '' ? '' : `revision ${job.revision}`]
  return {
    title: job.title,
    subtitles: lines.filter((line) => line !== ''),
    units: job.units,
    rooms: survey.rooms,
    doorways: survey.doorways,
    floors: floors.map(({ floor, area, published }) => ({
      published,
      area,
      span: floor.name.span,
      rooms: floor.rooms.map((room) => room.key),
    })),
    incompleteBecause: takeoff.incompleteBecause,
  }
}
