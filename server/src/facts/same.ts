import { LiveSpan } from './live-span.ts'

/** Whether two plain values are made of the same; a place that moves with its text is only itself. */
export function same(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (a instanceof LiveSpan || b instanceof LiveSpan) return false
  const [inA, inB] = [Object.entries(a), Object.entries(b)]
  return inA.length === inB.length && inA.every(([key, value]) => sameIn(value, b, key))
}

function sameIn(value: unknown, other: object, key: string): boolean {
  return key in other && same(value, (other as Readonly<Record<string, unknown>>)[key])
}

/** Whether two lists hold the very same things. */
export function sameThings(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return false
  return true
}
