import { readLength, type TapeOptions } from '../units/tape.ts'
import { piecesOf } from '../units/tape-pieces.ts'
import type { Item, RawMeasure } from './grammar.ts'

/**
 * `30" 1' 2"`, read as two figures `30" 1'` and `2"`: the feet that the first one ends with belong to
 * the inches of the second, for no reading goes on with feet. Where the feet start, from the line's
 * first word on; null where nothing of the kind stands there.
 */
export function feetApart(left: Item, right: Item, options: TapeOptions): number | null {
  if (left.kind !== 'measure' || right.kind !== 'measure') return null
  const { image, startOffset } = lastFigure(left.measure)
  const pieces = piecesOf(image)
  if (!/["']n'$/.test(pieces.map(({ kind }) => kind).join(''))) return null
  const at = image.lastIndexOf(pieces.at(-2)!.text)
  const isLength = (text: string): boolean => readLength(text, options).nm !== null
  const joined = `${image.slice(at)} ${right.measure.first.image}`
  return isLength(image.slice(0, at).trimEnd()) && isLength(joined) ? startOffset + at : null
}

function lastFigure({ first, by, within }: RawMeasure) {
  return within ?? by ?? first
}
