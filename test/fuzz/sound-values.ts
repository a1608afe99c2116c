import { hold } from './fault.ts'

/** Signs of a value that no output may hold, as text shows them. */
const UNSOUND =
  /NaN|Infinity|undefined|\[object|\bnull\b|(?<![\w.,/-])-0(?:\.0+)?(?![\w./]|\s*['"]?\s*\d)/g

/** Holds an output against the text it comes from: what the user typed may stand in it, nothing else. */
export function holdSoundText(output: string, typed: string, where: string): void {
  for (const [found] of output.matchAll(UNSOUND)) {
    hold(typed.includes(found), `${where} shows no value`, () => around(output, found))
  }
}

function around(output: string, found: string): string {
  const at = output.indexOf(found)
  return `"${found}" in ${JSON.stringify(output.slice(Math.max(0, at - 80), at + 80))}`
}

/** Holds every number below a value: JSON would write what is none as null, and -0 as 0. */
export function holdSoundValues(value: unknown, where: string): void {
  const waiting: unknown[] = [value]
  const met = new Set<unknown>()
  while (waiting.length > 0) {
    const one = waiting.pop()
    if (typeof one === 'number') {
      hold(Number.isFinite(one) && !Object.is(one, -0), `${where} holds no number`, () =>
        Object.is(one, -0) ? `-0 in ${JSON.stringify(value).slice(0, 300)}` : String(one),
      )
    }
    if (typeof one !== 'object' || one === null || met.has(one)) continue
    met.add(one)
    if (one instanceof Map) waiting.push(...one.keys(), ...one.values())
    else waiting.push(...Object.values(one))
  }
}
