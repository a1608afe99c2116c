import type { Nm } from '../units/length.ts'
import { readLength, type TapeOptions } from '../units/tape.ts'

/** What a reading may have been before one slip of the finger. */
export interface Slip {
  readonly text: string
  readonly nm: Nm
  /** What went wrong, as a question. */
  readonly asks: string
}

/**
 * The readings from which one slip makes this text, likeliest first: a digit typed twice, a digit too
 * many, two digits exchanged. Only texts that a tape can show and a person would write.
 */
export function digitSlips(text: string, options: TapeOptions): readonly Slip[] {
  const digits = [...text].flatMap((sign, at) => (/[0-9]/.test(sign) ? [at] : []))
  const without = (at: number): string => text.slice(0, at) + text.slice(at + 1)
  const doubled = digits.filter((at) => text[at] === text[at + 1])
  const exchanged = digits.filter((at) => /[0-9]/.test(text[at + 1] ?? '') && !doubled.includes(at))
  return [
    ...doubled.map((at) => [without(at), `a ${text[at]} typed twice?`] as const),
    ...digits.map((at) => [without(at), `a ${text[at]} too many?`] as const),
    ...exchanged.map((at) => [exchange(text, at), 'two digits exchanged?'] as const),
  ].flatMap(([candidate, asks]) => {
    const { nm } = readLength(candidate, options)
    const isTyped = !/^0[0-9']/.test(candidate)
    return nm === null || !isTyped ? [] : [{ text: candidate, nm, asks }]
  })
}

function exchange(text: string, at: number): string {
  return text.slice(0, at) + text[at + 1] + text[at] + text.slice(at + 2)
}
