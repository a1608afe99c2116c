import { type Compiled, compile, compiling, type Kept, newKept } from '../../server/src/compile.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { dice } from '../generate/dice.ts'
import { randomJob } from '../generate/job.ts'
import { type Editing, edited, type Files } from './edits.ts'
import { plain } from './plain.ts'

/** Edits of one sequence. */
export const EDITS = 25

/** Where an edited job, worked out with what was kept, differs from the same job worked out afresh. */
export interface Difference {
  readonly where: string
  readonly again: string | undefined
  readonly fresh: string | undefined
}

/**
 * One job edited again and again; the first difference, or null. Now and then a version is left half
 * worked out, as an editor leaves it when the next key comes.
 */
export function firstDifference(seed: number): Difference | null {
  const { files, root } = randomJob(seed, seed % 3 === 0 ? 'nasty' : 'realistic')
  const thrown = dice(seed)
  const kept = newKept()
  let editing: Editing = { files, before: [] }
  for (let edit = 0; edit < EDITS; edit++) {
    const isLast = edit === EDITS - 1
    if (thrown.chance(15)) leave(editing.files, root, kept, thrown.below(40))
    else {
      const again = shown(compileAgain(editing.files, root, kept), isLast)
      const fresh = shown(compile(editing.files, root), isLast)
      for (const part of new Set([...again.keys(), ...fresh.keys()]))
        if (again.get(part) !== fresh.get(part))
          return {
            where: `seed ${seed}, edit ${edit}: ${part}`,
            again: again.get(part),
            fresh: fresh.get(part),
          }
    }
    editing = edited(editing, thrown)
  }
  return null
}

function compileAgain(files: Files, root: string, kept: Kept): ReturnType<typeof compile> {
  const steps = compiling(files, root, new Map(), kept)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

function leave(files: Files, root: string, kept: Kept, after: number): void {
  const steps = compiling(files, root, new Map(), kept)
  for (let i = 0; i < after && !steps.next().done; i++);
}

/** What an editor shows of a job as text; with `all` also what that is made from. */
function shown(compiled: ReturnType<typeof compile>, all: boolean): ReadonlyMap<string, string> {
  if ('missing' in compiled) return new Map([['missing', plain(compiled)]])
  const { trees, job, survey, floors, takeoff, messages, exit } = compiled
  const seen = [
    ['messages', plain(messages)],
    ['takeoff', plain([takeoff, exit])],
    ['published', plain(floors.map(({ published }) => published))],
    ['drawing', drawing(compiled)],
  ] as const
  const under = { trees, job, survey, floors }
  const made = Object.entries(all ? under : {}).map(
    ([part, value]) => [part, plain(value)] as const,
  )
  return new Map([...seen, ...made])
}

function drawing(compiled: Compiled): string {
  return svg(sceneOf(subjectOf(compiled)))
}
