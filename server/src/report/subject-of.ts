import type { Compiled } from './compiled.ts'
import type { Subject } from './drawing/subject.ts'

/** What a job's plan shows: all its floors on one sheet. */
export function subjectOf({ job, survey, floors, takeoff }: Compiled): Subject {
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
      rooms: floor.rooms.map((room) => room.key),
    })),
    incompleteBecause: takeoff.incompleteBecause,
  }
}
