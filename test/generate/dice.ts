/** Chance from a seed: the same seed throws the same numbers anywhere. */
export interface Dice {
  /** A whole number from 0 to below `count`. */
  below(count: number): number
  /** A whole number from `least` to `most`, both possible. */
  between(least: number, most: number): number
  pick<T>(from: readonly T[]): T
  /** True in so many cases of a hundred. */
  chance(percent: number): boolean
}

/** Mulberry32 (T. Ettinger's generator, in the public domain; from memory), mixed in 32-bit steps. */
export function dice(seed: number): Dice {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (count: number) => Math.floor(next() * count)
  return {
    below,
    between: (least, most) => least + below(most - least + 1),
    pick: (from) => from[below(from.length)]!,
    chance: (percent) => below(100) < percent,
  }
}
