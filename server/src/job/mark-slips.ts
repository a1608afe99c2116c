import { readLength, type TapeOptions } from '../units/tape.ts'
import { piecesOf } from '../units/tape-pieces.ts'
import type { Slip } from './digit-slips.ts'

/** The inches that `30'` may have been before the wrong mark was typed: none where it is no feet alone. */
export function markSlips(text: string, options: TapeOptions): readonly Slip[] {
  const [amount, mark, more] = piecesOf(text)
  if (amount?.kind !== 'n' || mark?.kind !== "'" || more !== undefined) return []
  const inches = `${amount.text}"`
  const { nm } = readLength(inches, options)
  return nm === null ? [] : [{ text: inches, nm, asks: 'inches, not feet?' }]
}
