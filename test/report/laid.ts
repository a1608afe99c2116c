import { bind } from '../../server/src/job/bind.ts'
import { parse } from '../../server/src/language/parse.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import type { LaidFloor } from '../../server/src/layout/lay.ts'
import { netInFrame } from '../../server/src/layout/net.ts'
import type { Compiled } from '../../server/src/report/compiled.ts'
import { survey as surveyRooms } from '../../server/src/survey/survey-job.ts'
import { takeoff } from '../../server/src/takeoff/count.ts'
import { tiled } from './tiling.ts'

/** A job from its text with every stage but the planner, whose place the plain tiling takes. */
export function laid(text: string, others: ReadonlyMap<string, string> = new Map()): Compiled {
  const trees = [['job.floor', text] as const, ...others].map(([file, one]) => parse(file, one))
  const { job, messages: bound } = bind(trees, 'job.floor')
  const survey = surveyRooms(job)
  const frame = { east: 1, north: 0 }
  const floors = job.floors.flatMap((floor): LaidFloor[] => {
    const area = floorArea(job, survey, floor)
    const product = job.products.find((one) => one.name.key === floor.product?.key)
    if (product === undefined || area.gross.length === 0) return []
    const net = netInFrame(area, frame)
    const low = Math.min(...net.flat().map(({ y }) => y))
    const names = { floor: floor.name.text, product: product.name.text, frame }
    const published = tiled(net, low, names)
    return [{ floor, product, area, net, published, messages: [] } as unknown as LaidFloor]
  })
  const before = [...trees.flatMap((tree) => tree.messages), ...bound, ...survey.messages]
  const counted = takeoff(job, survey, floors, before)
  const wrong = before.some((one) => one.weight === 'error' || one.weight === 'warning')
  return {
    root: 'job.floor',
    trees,
    job,
    survey,
    floors,
    takeoff: counted,
    messages: before,
    exit: wrong ? 'errors' : counted.complete ? 'sound' : 'incomplete',
  }
}
