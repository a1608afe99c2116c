import { readDecimal } from './number.ts'
import { type Ratio, ratio, sum, ZERO } from './ratio.ts'
import { vulgarFraction } from './signs.ts'
import type { Piece } from './tape-pieces.ts'

/** What the numbers among some pieces of a reading add up to: `4 1/2` is 9/2. Marks count nothing. */
export function amountOf(pieces: readonly Piece[]): Ratio {
  return sum(pieces.map(partOf))
}

function partOf({ kind, text }: Piece): Ratio {
  switch (kind) {
    case 'n':
    case 'd':
      return readDecimal(text) ?? ZERO
    case 'v':
      return ratio(...vulgarFraction(text)!)
    case 'f': {
      const [over, under] = text.split(/[^0-9]/)
      return ratio(BigInt(over!), BigInt(under!))
    }
    default:
      return ZERO
  }
}
