import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { expect, test } from 'vitest'
import { checkJson } from '../../server/src/report/json/check.ts'
import { estimateJson } from '../../server/src/report/json/estimate.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import { compileExample, EXAMPLE_JOBS, EXAMPLE_TEXTS } from '../examples/read-example.ts'

const SCHEMAS = new URL('../../server/src/report/schema/', import.meta.url)
const ajv = new Ajv2020({ allErrors: true })

function faultsOf(name: string, text: string): unknown {
  const schema = JSON.parse(readFileSync(new URL(`${name}.schema.json`, SCHEMAS), 'utf8'))
  ajv.removeSchema()
  ajv.validate(schema, JSON.parse(text))
  return ajv.errors ?? []
}

/** A job as it is, and one whose second half is gone: both must come out in the published shape. */
const CASES = EXAMPLE_JOBS.flatMap((job) => {
  const text = EXAMPLE_TEXTS.get(job)!
  return [
    { job, part: 'whole', text },
    { job, part: 'first half', text: text.slice(0, text.length / 2) },
  ]
})

for (const { job, part, text } of CASES) {
  test(`the JSON of ${job}, ${part}, keeps to its schemas`, () => {
    const compiled = compileExample(job, text)
    expect(faultsOf('check', checkJson(compiled))).toEqual([])
    expect(faultsOf('estimate', estimateJson(compiled))).toEqual([])
    expect(faultsOf('layout', layoutJson(compiled))).toEqual([])
  })
}

test('a schema refuses what it does not know', () => {
  const compiled = compileExample(EXAMPLE_JOBS[0]!)
  const spoilt = JSON.stringify({ ...JSON.parse(layoutJson(compiled)), more: 1 })
  expect(faultsOf('layout', spoilt)).not.toEqual([])
})
