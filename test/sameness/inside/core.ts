import { drawingOf } from '../../../server/src/cli/drawing.ts'
import { type Compiled, compile } from '../../../server/src/compile.ts'
import type { Message } from '../../../server/src/facts/message.ts'
import { refusal } from '../../../server/src/host/refusal.ts'
import { format } from '../../../server/src/language/format.ts'
import { checkJson } from '../../../server/src/report/json/check.ts'
import { estimateJson } from '../../../server/src/report/json/estimate.ts'
import { layoutJson } from '../../../server/src/report/json/layout.ts'
import { estimateText } from '../../../server/src/report/text/estimate.ts'
import { explainText } from '../../../server/src/report/text/explain.ts'
import { layoutText } from '../../../server/src/report/text/layout.ts'
import { verify } from '../../../server/src/verify/verify.ts'
import type { JobText } from './order.ts'

/** The core as it is bundled for every environment: no Node, no page, no command line. */
export interface Core {
  readonly compile: typeof compile
  readonly outputs: (compiled: Compiled) => Outputs
  readonly outputsFrom: (job: JobText, reversed: boolean) => Outputs
}

/** Each text that people can have of a job, by its name. */
export type Outputs = ReadonlyMap<string, string>

export { compile }

export function outputs(compiled: Compiled): Outputs {
  const layout = layoutJson(compiled)
  return new Map([
    ['messages', compiled.messages.map(messageText).join('\n')],
    ['check JSON', checkJson(compiled)],
    ['estimate', estimateText(compiled)],
    ['estimate JSON', estimateJson(compiled)],
    ['why', why(compiled)],
    ['cut list', layoutText(compiled)],
    ['layout JSON', layout],
    ['proof', JSON.stringify(verify(JSON.parse(layout)), null, 1)],
    ['drawing', drawingOf(compiled)],
    ['formatted', compiled.trees.map(format).join('\n')],
  ])
}

/**
 * The outputs of a job whose files are all at hand; others may be among them. They are handed on as a
 * host does it: without the mark of byte order that a file may begin with.
 */
export function outputsFrom({ root, files }: JobText, reversed: boolean): Outputs {
  const read = files.map(([path, text]) => [path, text.replace(/^\uFEFF/, '')] as const)
  const texts = new Map(reversed ? read.reverse() : read)
  const first = compile(texts, root)
  if (!('missing' in first)) return outputs(first)
  const absent = first.missing.map((name) => [name, refusal(name, { kind: 'missing' })] as const)
  const second = compile(texts, root, new Map(absent))
  if (!('missing' in second)) return outputs(second)
  throw new Error(`asked for again: ${second.missing.join(', ')}`)
}

/** All of a message, also what the reports leave out. */
function messageText(message: Message): string {
  return JSON.stringify(message, null, 1)
}

function why(compiled: Compiled): string {
  const { floors, products } = compiled.takeoff
  return [...floors, ...products]
    .flatMap(({ quantities }) => quantities)
    .map((quantity) => explainText(quantity, compiled))
    .join('\n')
}
