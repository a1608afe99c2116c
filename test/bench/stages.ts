import { bind } from '../../server/src/job/bind.ts'
import { parse } from '../../server/src/language/parse.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { type LaidFloor, layFloor } from '../../server/src/layout/lay.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { survey as surveyOf } from '../../server/src/survey/survey-job.ts'
import { takeoff as count } from '../../server/src/takeoff/count.ts'
import { verify } from '../../server/src/verify/verify.ts'

const ROOT = 'large.floor'

/** One stage by itself: what comes before it is done already. */
export interface Stage {
  readonly name: string
  readonly run: () => unknown
}

/** Every stage of a job, each ready to be run again and again on what those before it gave. */
export function stagesOf(text: string): readonly Stage[] {
  const trees = [parse(ROOT, text)]
  const { job, messages: bound } = bind(trees, ROOT)
  const survey = surveyOf(job)
  const productOf = (key: string | undefined) => job.products.find(({ name }) => name.key === key)!
  // A copy of the survey: what was looked up in it for an earlier run counts again.
  const areas = () => {
    const fresh = { ...survey }
    return job.floors.map((floor) => floorArea(job, fresh, floor))
  }
  const measured = areas()
  const layAll = () =>
    job.floors
      .map((floor, i) => {
        const product = productOf(floor.product?.key)
        return layFloor({ job, floor, product, area: measured[i]!, survey })
      })
      .filter((laid): laid is LaidFloor => laid !== null)
  const floors = layAll()
  const messages = [...bound, ...survey.messages, ...floors.flatMap((floor) => floor.messages)]
  const counted = () => count(job, { ...survey }, floors, messages)
  const takeoff = counted()
  const compiled = {
    root: ROOT,
    trees,
    job,
    survey,
    floors,
    takeoff,
    messages,
    exit: 'sound',
  } as const
  const published: unknown = JSON.parse(layoutJson(compiled))
  return [
    { name: 'parse', run: () => parse(ROOT, text) },
    { name: 'bind', run: () => bind(trees, ROOT) },
    { name: 'bind and survey', run: () => surveyOf(bind(trees, ROOT).job) },
    { name: 'area', run: areas },
    { name: 'layout', run: layAll },
    { name: 'takeoff', run: counted },
    { name: 'drawing', run: () => svg(sceneOf(subjectOf(compiled))) },
    { name: 'verify', run: () => verify(published) },
  ]
}
