import type { EngineChanges } from './order.ts'

/** Left to each engine by the language's specification; the others give the same bits everywhere. */
const INEXACT = [
  'acos',
  'acosh',
  'asin',
  'asinh',
  'atan',
  'atan2',
  'atanh',
  'cbrt',
  'cos',
  'cosh',
  'exp',
  'expm1',
  'hypot',
  'log',
  'log10',
  'log1p',
  'log2',
  'pow',
  'sin',
  'sinh',
  'tan',
  'tanh',
] as const

type Functions = Record<string, (...values: never[]) => unknown>

/** Makes this process or worker another engine, or one with another clock. */
export function changeEngine({ clock, otherSines, forbidden }: EngineChanges): void {
  if (clock !== '') setClock(clock)
  if (otherSines) for (const name of INEXACT) Math[name] = nextUp(Math[name] as never) as never
  if (forbidden) forbid()
}

/** Whoever asks for the time is told it from `clock` on, or ever earlier ones. */
function setClock(clock: string): void {
  const Real = Date
  const began = Real.now()
  const start = clock === 'backwards' ? began : Real.parse(clock)
  let looks = 0
  const now = () => (clock === 'backwards' ? start - 1000 * looks++ : start + (Real.now() - began))
  globalThis.Date = new Proxy(Real, {
    apply: () => new Real(now()).toString(),
    construct: (_, given) => Reflect.construct(Real, given.length === 0 ? [now()] : given),
    get: (target, name) => (name === 'now' ? now : Reflect.get(target, name)),
  })
}

/** The same function, one bit further from zero: as far as two good engines differ. */
function nextUp(exact: (...values: number[]) => number): (...values: number[]) => number {
  const bits = new DataView(new ArrayBuffer(8))
  return (...values) => {
    const value = exact(...values)
    if (!Number.isFinite(value)) return value
    bits.setFloat64(0, value)
    bits.setBigUint64(0, bits.getBigUint64(0) + 1n)
    return bits.getFloat64(0)
  }
}

function forbid(): void {
  const functions: readonly (readonly [object, readonly string[]])[] = [
    [Math, [...INEXACT, 'random']],
    [String.prototype, ['localeCompare', 'toLocaleLowerCase', 'toLocaleUpperCase']],
    [Number.prototype, ['toLocaleString', 'toFixed', 'toPrecision', 'toExponential']],
    [BigInt.prototype, ['toLocaleString']],
    [Array.prototype, ['toLocaleString']],
    [performance, ['now']],
  ]
  for (const [holder, names] of functions)
    for (const name of names) (holder as Functions)[name] = () => refuse(name)
  for (const name of ['Date', 'Intl'])
    Object.defineProperty(globalThis, name, { get: () => refuse(name) })
}

function refuse(name: string): never {
  throw new Error(`the core may not ask for ${name}`)
}
