import { compile } from '../../server/src/compile.ts'
import type { LaidFloor } from '../../server/src/layout/lay.ts'
import { plankRules } from '../../server/src/layout/plank-rules.ts'
import type { Problem } from '../../server/src/layout/problem.ts'
import { problemOf } from '../../server/src/layout/problem-of.ts'
import { zonesOf } from '../../server/src/layout/zones.ts'
import type { Mode } from '../generate/draw.ts'
import { randomJob } from '../generate/job.ts'

/** So many stretches are gone through within a second. */
const MOST_STRETCHES = 30
const MOST_IN_A_COURSE = 2

/**
 * The problems that the floors of a random job were laid from, of those that every choice can be tried
 * on: one length, no posts, a few stretches side by side.
 */
export function smallProblems(seed: number, mode: Mode): readonly Problem[] {
  const { files, root } = randomJob(seed, mode)
  const result = compile(files, root)
  if ('missing' in result) return []
  return result.floors
    .filter(({ used }) => used.length === 1)
    .map((floor) => problemBehind(floor, plankRules(result.job, floor.product)))
    .filter(({ stretches, courses }) => {
      const isPlain = stretches.every(({ posts }) => posts.length === 0)
      const isSmall = stretches.length <= MOST_STRETCHES
      const count = (course: number) => stretches.filter((each) => each.course === course).length
      return isPlain && isSmall && courses.every(({ course }) => count(course) <= MOST_IN_A_COURSE)
    })
}

function problemBehind({ net, line, area, start }: LaidFloor, rules: Problem['rules']): Problem {
  const setOut = { seam: line.seam, start: line.start, onward: 'down' as const }
  return problemOf(net, setOut, rules, zonesOf(area, start.frame, rules.lengths[0]!.length)).problem
}
