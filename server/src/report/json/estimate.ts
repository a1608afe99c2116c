import type { Derivation } from '../../facts/derivation.ts'
import { sourceInWords } from '../../facts/source.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'
import { cautionsOf, PREAMBLE } from '../cautions.ts'
import type { Compiled } from '../compiled.ts'
import { placeIn } from '../place.ts'
import { messagesJson } from './messages.ts'
import { surveyJson } from './survey.ts'
import { writeJson } from './write.ts'

/** What `floorscribe estimate --format json` writes (schema `estimate`). */
export function estimateJson(compiled: Compiled): string {
  const { job, takeoff, exit } = compiled
  const quantities = (list: readonly Quantity[]) => list.map((one) => quantityJson(one, compiled))
  return writeJson({
    format: 'floorscribe estimate',
    version: 1,
    job: job.title,
    verdict: exit,
    complete: takeoff.complete,
    incompleteBecause: takeoff.incompleteBecause,
    floors: takeoff.floors.map((one) => ({ ...one, quantities: quantities(one.quantities) })),
    products: takeoff.products.map((one) => ({ ...one, quantities: quantities(one.quantities) })),
    survey: surveyJson(compiled),
    messages: messagesJson(compiled),
    cautions: {
      preamble: PREAMBLE,
      cautions: cautionsOf(job).map(({ about, text, sourceText }) => ({
        about,
        text,
        source: sourceText,
      })),
    },
  })
}

/** Exact values as a ratio of two decimal strings, beside what people read. */
function quantityJson(quantity: Quantity, compiled: Compiled): object {
  const { key, label, room, unit, value, printed, complete, derivation } = quantity
  const exact = value === null ? null : { n: `${value.n}`, d: `${value.d}` }
  const why = derivationJson(derivation, compiled)
  return { key, label, room, unit, value: exact, printed, complete, why }
}

function derivationJson(derivation: Derivation, compiled: Compiled): object {
  const { label, value, formula, inputs, rule, source, span } = derivation
  const tree = span === null ? undefined : compiled.trees.find((one) => one.file === span.file)
  return {
    label,
    value,
    formula,
    rule,
    source: sourceInWords(source),
    place: span && tree ? { file: span.file, ...placeIn(tree, span.start) } : null,
    inputs: inputs.map((input) => derivationJson(input, compiled)),
  }
}
