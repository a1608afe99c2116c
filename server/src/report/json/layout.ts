import type { PublishedLayouts } from '../../layout/published.ts'
import type { Compiled } from '../compiled.ts'
import { writeJson } from './write.ts'

/** The published layout of a job: what `floorscribe verify` proves again. */
export function layoutJson({ job, floors }: Compiled): string {
  const published: PublishedLayouts = {
    format: 'floorscribe layout',
    version: 1,
    unit: 'nm',
    job: job.title,
    floors: floors.map((floor) => floor.published),
  }
  return writeJson(published)
}
