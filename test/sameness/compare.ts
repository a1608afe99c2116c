import type { Environment } from './environments.ts'
import type { Answer, JobText } from './inside/order.ts'
import { type Lab, runIn } from './lab.ts'

/** Digests of outputs by job and output. */
export function digestsOf({ outputs }: Answer): ReadonlyMap<string, string> {
  return new Map(outputs.map(({ key, digest }) => [key, digest]))
}

/** Keys of outputs that are not as expected, each once; one that nobody expects is among them. */
export function differing(
  expected: ReadonlyMap<string, string>,
  { outputs }: Answer,
): readonly string[] {
  const keys = outputs.filter(({ key, digest }) => digest !== expected.get(key))
  return [...new Set(keys.map(({ key }) => key))]
}

interface Found {
  readonly first: Environment
  readonly other: Environment
  readonly jobs: readonly JobText[]
  /** Keys of what differed. */
  readonly keys: readonly string[]
}

/** For each output that differed its first line that does: both environments are asked again. */
export async function differences(
  lab: Lab,
  { first, other, jobs, keys }: Found,
): Promise<string[]> {
  if (keys.length === 0) return []
  const expected = textsOf(await runIn(lab, first, jobs, keys))
  const found = textsOf(await runIn(lab, other, jobs, keys))
  return keys.map((key) => {
    const should = expected.get(key)?.[0] ?? ''
    const is = found.get(key)?.find((text) => text !== should) ?? should
    return `${key}: ${firstDifference(should, is) ?? 'differed once, and not when asked again'}`
  })
}

/** Every text that an output had: two where a job was done twice. */
function textsOf({ outputs }: Answer): ReadonlyMap<string, readonly string[]> {
  const texts = new Map<string, readonly string[]>()
  for (const { key, text } of outputs)
    if (text !== undefined) texts.set(key, [...(texts.get(key) ?? []), text])
  return texts
}

/** The first line in which two texts differ, for a person; null where none does. */
export function firstDifference(expected: string, found: string): string | null {
  if (expected === found) return null
  const [should, is] = [expected.split('\n'), found.split('\n')]
  const at = should.findIndex((line, index) => line !== is[index])
  const index = at < 0 ? should.length : at
  const shown = (line: string | undefined) => (line === undefined ? 'not there' : `"${line}"`)
  return `line ${index + 1} should be ${shown(should[index])} and is ${shown(is[index])}`
}
