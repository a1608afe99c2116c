import { groupBy } from './exact.ts'
import type { Found } from './found.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

/** No two joints of neighbouring courses meet their common seam in one point: four corners, no bond. */
export function checkAligned({ joints }: Found): readonly Finding[] {
  const starting = groupBy(joints, ({ course, at, low }) => `${course} ${at} ${low}`)
  return joints.flatMap(({ course, at, high, left }) =>
    (starting.get(`${course + 1} ${at} ${high}`) ?? []).map((above) => ({
      code: 'joints-align',
      text: `The joints right of pieces ${left.piece} and ${above.left.piece}, in courses ${course} and ${above.course}, are in line at ${mm(at)} along.`,
      course,
      piece: left.piece,
      at: [at, high] as const,
    })),
  )
}
