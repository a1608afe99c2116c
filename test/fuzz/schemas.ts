import { readFileSync } from 'node:fs'
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'

const SCHEMAS = new URL('../../server/src/report/schema/', import.meta.url)

/** Each schema alone: they carry no reference to one another. */
function validator(name: string): ValidateFunction {
  const schema = readFileSync(new URL(`${name}.schema.json`, SCHEMAS), 'utf8')
  return new Ajv2020().compile(JSON.parse(schema))
}

const VALIDATORS = new Map(
  ['check', 'estimate', 'layout'].map((name) => [`${name} json`, validator(name)]),
)

/** Where a report leaves its published schema. */
export function schemaFaults(name: string, value: unknown): readonly string[] {
  const validate = VALIDATORS.get(name)
  if (validate === undefined || validate(value)) return []
  return (validate.errors ?? []).map((one) => `${one.instancePath} ${one.message}`)
}
