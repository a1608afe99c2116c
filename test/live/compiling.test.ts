import { expect, test } from 'vitest'
import { type Compiled, compile, compiling, type Kept, newKept } from '../../server/src/compile.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { effort } from '../effort.ts'
import { dice } from '../generate/dice.ts'
import { randomJob } from '../generate/job.ts'
import { type Editing, edited, type Files } from './edits.ts'
import { plain } from './plain.ts'

/** The same as `compile`, with what earlier versions came to. */
function compileAgain(files: Files, root: string, kept: Kept): ReturnType<typeof compile> {
  const steps = compiling(files, root, new Map(), kept)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

/** Everything that an editor shows of a job, and what it is made from, as text. */
function shown(compiled: ReturnType<typeof compile>): Record<string, string> {
  if ('missing' in compiled) return { missing: plain(compiled) }
  const { job, survey, floors, takeoff, messages, exit } = compiled
  return {
    messages: plain(messages),
    takeoff: plain([takeoff, exit]),
    published: plain(floors.map(({ published }) => published)),
    job: plain(job),
    survey: plain(survey),
    floors: plain(floors),
    drawing: drawing(compiled),
  }
}

function drawing(compiled: Compiled): string {
  return svg(sceneOf(subjectOf(compiled)))
}

test('a job worked out again after each edit is the job worked out afresh', {
  timeout: 7_200_000,
}, () => {
  for (let seed = 0; seed < effort(12, 2000); seed++) {
    const { files, root } = randomJob(seed, seed % 3 === 0 ? 'nasty' : 'realistic')
    const thrown = dice(seed)
    const kept = newKept()
    let editing: Editing = { files, before: [] }
    for (let turn = 0; turn < 25; turn++) {
      const again = shown(compileAgain(editing.files, root, kept))
      const fresh = shown(compile(editing.files, root))
      for (const [part, text] of Object.entries(fresh))
        if (again[part] !== text)
          expect(again[part], `seed ${seed}, edit ${turn}: ${part}`).toBe(text)
      expect(Object.keys(again)).toEqual(Object.keys(fresh))
      editing = edited(editing, thrown)
    }
  }
})
