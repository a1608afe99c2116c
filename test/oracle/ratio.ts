/** An exact number: `n` over `d`, in lowest terms, `d` above nothing. Lengths are ratios of nanometres. */
export interface Ratio {
  readonly n: bigint
  readonly d: bigint
}

export function ratio(n: bigint | number, d: bigint | number = 1n): Ratio {
  const [over, under] = [BigInt(n), BigInt(d)]
  if (under === 1n) return { n: over, d: 1n }
  if (under === 0n) throw new RangeError('a ratio needs something to be over')
  const common = gcd(abs(over), abs(under)) * (under < 0n ? -1n : 1n)
  return { n: over / common, d: under / common }
}

export const ZERO = ratio(0n)

export const plus = (a: Ratio, b: Ratio): Ratio =>
  a.d === b.d ? ratio(a.n + b.n, a.d) : ratio(a.n * b.d + b.n * a.d, a.d * b.d)
export const minus = (a: Ratio, b: Ratio): Ratio => plus(a, negative(b))
export const times = (a: Ratio, b: Ratio): Ratio => ratio(a.n * b.n, a.d * b.d)
export const over = (a: Ratio, b: Ratio): Ratio => ratio(a.n * b.d, a.d * b.n)
export const sum = (all: readonly Ratio[]): Ratio => all.reduce(plus, ZERO)
export const half = (a: Ratio): Ratio => ratio(a.n, a.d * 2n)
export const negative = (a: Ratio): Ratio => ({ n: -a.n, d: a.d })
export const size = (a: Ratio): Ratio => ({ n: abs(a.n), d: a.d })

/** Below nothing, nothing or above it, as `a` is less than, equal to or more than `b`. */
export const compare = (a: Ratio, b: Ratio): number =>
  a.d === b.d ? sign(a.n - b.n) : sign(a.n * b.d - b.n * a.d)
export const same = (a: Ratio, b: Ratio): boolean => a.n === b.n && a.d === b.d

export function floor({ n, d }: Ratio): bigint {
  return n >= 0n ? n / d : -((-n + d - 1n) / d)
}

export function ceiling({ n, d }: Ratio): bigint {
  return -floor({ n: -n, d })
}

/** To the nearest whole number, and to the even one when midway. */
export function round(a: Ratio): bigint {
  const low = floor(a)
  const rest = sign(2n * (a.n - low * a.d) - a.d)
  return rest > 0 || (rest === 0 && low % 2n !== 0n) ? low + 1n : low
}

export function abs(a: bigint): bigint {
  return a < 0n ? -a : a
}

export function sign(a: bigint): number {
  return a > 0n ? 1 : a < 0n ? -1 : 0
}

export const least = (all: readonly bigint[]): bigint => all.reduce((a, b) => (b < a ? b : a))
export const most = (all: readonly bigint[]): bigint => all.reduce((a, b) => (b > a ? b : a))
export const total = (all: readonly bigint[]): bigint => all.reduce((a, b) => a + b, 0n)

function gcd(a: bigint, b: bigint): bigint {
  let [large, small] = [a, b]
  while (small !== 0n) [large, small] = [small, large % small]
  return large
}

/** To the 2⁻²⁰th, so that slanted places do not grow without end; whole numbers and halves stay. */
export function fine(a: Ratio): Ratio {
  return a.d <= 2n ? a : ratio(round(times(a, ratio(1n << 20n))), 1n << 20n)
}

/** The whole part of the square root. */
export function rootDown(square: bigint): bigint {
  if (square < 2n) return square
  let root = 1n << BigInt((square.toString(2).length + 1) >> 1)
  for (;;) {
    const next = (root + square / root) >> 1n
    if (next >= root) return root
    root = next
  }
}

/** The square root to the 2⁻⁶⁰th: far finer than anything that is rounded from it. */
export function root({ n, d }: Ratio): Ratio {
  return ratio(rootDown((n << 120n) / d), 1n << 60n)
}
