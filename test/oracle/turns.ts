import { type Ratio, ratio } from './ratio.ts'

/** Functions of an angle, right to sixteen digits. */
export const sine = (degrees: Ratio): Ratio => exactly(Math.sin(inRadians(degrees)))
export const cosine = (degrees: Ratio): Ratio => exactly(Math.cos(inRadians(degrees)))
export const tangent = (degrees: Ratio): Ratio => exactly(Math.tan(inRadians(degrees)))

/** As a double. */
export function asNumber({ n, d }: Ratio): number {
  return Number((n << 80n) / d) / 2 ** 80
}

/** A double as the ratio that it is, down to 2⁻⁵³. */
export function exactly(value: number): Ratio {
  return ratio(BigInt(Math.round(value * 2 ** 53)), 2n ** 53n)
}

const inRadians = (degrees: Ratio): number => (asNumber(degrees) * Math.PI) / 180
