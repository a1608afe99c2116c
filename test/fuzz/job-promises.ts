import { type Compiled, compile } from '../../server/src/compile.ts'
import { MOST_MESSAGES } from '../../server/src/language/parse.ts'
import { checkJson } from '../../server/src/report/json/check.ts'
import { estimateJson } from '../../server/src/report/json/estimate.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import type { Scene } from '../../server/src/report/scene.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { explainText } from '../../server/src/report/text/explain.ts'
import { layoutText } from '../../server/src/report/text/layout.ts'
import { visible } from '../../server/src/report/visible.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { filesOf, ROOT } from './corpus.ts'
import { hold, unthrown } from './fault.ts'
import { holdMessage } from './parser-promises.ts'
import { schemaFaults } from './schemas.ts'
import { holdSoundText, holdSoundValues } from './sound-values.ts'

/** Everything that a job comes to, as anybody sees it. */
export interface JobRun {
  readonly compiled: Compiled
  readonly scene: Scene
  readonly outputs: ReadonlyMap<string, string>
}

/** What a whole-job run times: from the text to every report. */
export function runJob(text: string): JobRun {
  const compiled = compiledFrom(text)
  const { floors, products } = compiled.takeoff
  const quantities = [...floors, ...products].flatMap((one) => one.quantities)
  const scene = unthrown('scene', () => sceneOf(subjectOf(compiled)))
  const reports: readonly (readonly [string, () => string])[] = [
    ['estimate', () => estimateText(compiled)],
    ['explain', () => quantities.map((one) => explainText(one, compiled)).join('')],
    ['layout', () => layoutText(compiled)],
    ['drawing', () => svg(scene)],
    ['check json', () => checkJson(compiled)],
    ['estimate json', () => estimateJson(compiled)],
    ['layout json', () => layoutJson(compiled)],
  ]
  return {
    compiled,
    scene,
    outputs: new Map(reports.map(([name, write]) => [name, unthrown(name, write)])),
  }
}

/** An include that the text does not hold is a file that is not there. */
function compiledFrom(text: string): Compiled {
  const texts = filesOf(text)
  const absent = new Map<string, string>()
  for (;;) {
    const result = unthrown('compile', () => compile(texts, ROOT, absent))
    if (!('missing' in result)) return result
    const fresh = result.missing.filter((file) => !absent.has(file))
    hold(fresh.length > 0, 'a missing include is asked for again', () => result.missing.join(', '))
    for (const file of fresh) absent.set(file, `There is no file "${file}".`)
  }
}

/** Holds all that compiling and reporting a job promises, whatever the text is. */
export function holdJobPromises(text: string, run: JobRun): void {
  const { compiled, outputs } = run
  holdMessages(text, compiled)
  holdTotals(compiled, outputs)
  const { survey, takeoff, floors } = compiled
  holdSoundValues({ survey, takeoff, floors }, 'a compiled job')
  holdSoundValues(run.scene, 'the scene')
  for (const [name, output] of outputs) {
    if (name.endsWith('json')) holdJson(name, output)
    else holdSoundText(output, text, `the ${name}`)
    hold(output.isWellFormed(), `the ${name} is no text`, () => name)
  }
  holdProof(outputs.get('layout json')!)
  const again = runJob(text)
  for (const [name, output] of outputs) {
    hold(again.outputs.get(name) === output, 'the same text gives other bytes', () => name)
  }
}

function holdMessages(text: string, { trees, messages }: Compiled): void {
  const texts = new Map([...filesOf(text)])
  const most = (MOST_MESSAGES + 1) * (trees.length + 1)
  hold(messages.length <= most, 'too many messages', () => `${messages.length}`)
  for (const message of messages) holdMessage(message, texts)
}

/** A total that is not ready never looks ready, in no output. */
function holdTotals({ messages, takeoff, exit }: Compiled, outputs: JobRun['outputs']): void {
  const open = (weight: string) => messages.filter((one) => one.weight === weight && !one.accepted)
  const [errors, waiting] = [open('error'), open('incomplete')]
  const ready = errors.length === 0 && waiting.length === 0
  const quantities = [...takeoff.floors, ...takeoff.products].flatMap((one) => one.quantities)
  const cause = () => [...errors, ...waiting].map(({ code }) => code).join(', ')
  hold(ready || !takeoff.complete, 'a total is complete beside an error', cause)
  hold(errors.length === 0 || exit === 'errors', 'an error ends well', cause)
  hold(exit !== 'sound' || (ready && takeoff.complete), 'a job that is not ready ends sound', cause)
  hold(
    quantities.every(({ complete }) => complete === takeoff.complete),
    'a quantity looks ready',
    cause,
  )
  if (!takeoff.complete) holdUnready(quantities, outputs)
}

function holdUnready(quantities: readonly Quantity[], outputs: JobRun['outputs']): void {
  const lines = outputs.get('estimate')!.split('\n')
  for (const { label, printed } of quantities) {
    const marked = `incomplete, ${printed} so far`
    hold(
      lines.some((line) => line.includes(visible(label)) && line.includes(marked)),
      'a printed total looks ready',
      () => label,
    )
  }
  const says = (output: string, words: string) =>
    hold(outputs.get(output)!.includes(words), `the ${output} looks final`, () => words)
  says('estimate', 'Totals are incomplete:')
  says('drawing', 'NOT FINAL')
  if (!outputs.get('layout')!.startsWith('No floor')) says('layout', 'Not final:')
  says('estimate json', '"complete": false')
}

function holdJson(name: string, output: string): void {
  const faults = schemaFaults(
    name,
    unthrown(name, () => JSON.parse(output)),
  )
  hold(faults.length === 0, `the ${name} leaves its schema`, () => faults.join('; '))
}

function holdProof(layout: string): void {
  const { sound, faults } = unthrown('verify', () => verify(JSON.parse(layout)))
  hold(sound, `a layout has the fault ${faults[0]?.code}`, () =>
    faults
      .map((fault) => `${fault.code} ${fault.text}`)
      .join('; ')
      .slice(0, 500),
  )
}
