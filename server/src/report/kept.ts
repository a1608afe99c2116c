import { Shelf } from '../facts/kept.ts'
import type { JobKept } from '../job/bind.ts'
import type { LiveFile } from '../language/parse-again.ts'
import type { AreasKept } from '../layout/area.ts'
import type { LayoutsKept } from '../layout/lay.ts'
import type { SurveyKept } from '../survey/survey-job.ts'
import type { TakeoffKept } from '../takeoff/count.ts'

/**
 * What earlier versions of a job came to, for the next: `compiling` takes from it what the text did not
 * move, and puts in what it works out. What comes out is the same with any or none. Every stage is kept
 * by what went into it, never by what was edited.
 */
export interface Kept {
  /** A run begins, and it ends; of one that is left before its end nothing is lost. */
  readonly begin: () => void
  readonly end: () => void
  readonly files: Shelf<string, LiveFile>
  readonly job: JobKept
  readonly survey: SurveyKept
  readonly areas: AreasKept
  readonly layouts: LayoutsKept
  readonly takeoff: TakeoffKept
}

/** So many runs may be left one after the other before what they had no use for goes all the same. */
const MOST_LEFT = 64

/** A memory for the versions of one job. */
export function newKept(): Kept {
  const shelves: { readonly turn: () => void }[] = []
  const shelf = <Key, Value>(): Shelf<Key, Value> => {
    const made = new Shelf<Key, Value>()
    shelves.push(made)
    return made
  }
  let begun = 0
  const end = () => {
    begun = 0
    for (const made of shelves) made.turn()
  }
  return {
    begin: () => {
      if (begun === MOST_LEFT) end()
      begun += 1
    },
    end,
    files: shelf(),
    job: {
      rooms: { says: shelf(), outlines: shelf(), rooms: shelf() },
      products: shelf(),
      floors: shelf(),
    },
    survey: { plans: shelf(), rooms: shelf(), doorways: shelf() },
    areas: shelf(),
    layouts: { floors: shelf(), layouts: shelf() },
    takeoff: { floors: shelf(), products: shelf() },
  }
}
