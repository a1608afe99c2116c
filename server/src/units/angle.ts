import { cosDegrees, PI, sinDegrees } from './functions.ts'
import { wholeNumber } from './number.ts'
import { compare, multiply, type Ratio, ratio, subtract } from './ratio.ts'
import { roundRatio } from './round.ts'

const FULL_TURN = ratio(360)

/** The angle brought into [0, 360) degrees, exactly. */
export function withinFullTurn(degrees: Ratio): Ratio {
  const turns = roundRatio(ratio(degrees.n, degrees.d * 360n), 'down')
  return subtract(degrees, multiply(FULL_TURN, ratio(turns)))
}

/** The sine of an angle in degrees: exactly 0, 1 and −1 at whole quarter turns. */
export function sineOfDegrees(degrees: Ratio): number {
  const angle = withinFullTurn(degrees)
  const quarter = roundRatio(ratio(angle.n, angle.d * 90n), 'half to even')
  const rest = ratioToDouble(subtract(angle, ratio(quarter * 90n)))
  switch (quarter % 4n) {
    case 0n:
      return sinDegrees(rest) + 0
    case 1n:
      return cosDegrees(rest)
    case 2n:
      return -sinDegrees(rest) + 0
    default:
      return -cosDegrees(rest)
  }
}

/** The cosine of an angle in degrees: exactly 0, 1 and −1 at whole quarter turns. */
export function cosineOfDegrees(degrees: Ratio): number {
  return sineOfDegrees({ n: degrees.n + 90n * degrees.d, d: degrees.d })
}

/** Radians to degrees, as a double. */
export function toDegrees(radians: number): number {
  return (radians * 180) / PI
}

/** Decimals that are kept of an angle in degrees: more than a double holds of a right angle. */
const DECIMALS = 10n ** 15n

/** By whole part and decimals, so that a figure of forty digits does no harm. */
function ratioToDouble(value: Ratio): number {
  if (compare(value, ratio(0)) < 0) return -ratioToDouble({ n: -value.n, d: value.d })
  const scaled = (value.n * DECIMALS) / value.d
  return wholeNumber(scaled) / 1e15
}
