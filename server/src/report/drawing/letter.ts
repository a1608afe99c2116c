import type { Point, Ring } from '../../geometry/point.ts'
import type { Nm } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'
import type { Lettering, Tone } from '../scene.ts'
import { visible } from '../visible.ts'
import { type Direction, EAST, inMillionths, moved, plate } from './vector.ts'

/** Widths in hundredths of the height, on the generous side: the font is the reader's own. */
const NARROW = 34
const PLAIN = 60
const WIDE = 88

/** About how wide a line of lettering is; never much too little with a common sans-serif face. */
export function widthOf(text: string, height: Nm): Nm {
  let hundredths = 0
  for (const character of visible(text)) hundredths += widthOfOne(character)
  return roundToNm((height * hundredths) / 100)
}

function widthOfOne(character: string): number {
  if (' .,;:\'|!ilIjtf/()"·'.includes(character)) return NARROW
  if ('MWmw%—@'.includes(character) || character > '\u2e80') return WIDE
  return PLAIN
}

export interface LetteringOptions {
  readonly anchor?: Lettering['anchor']
  readonly along?: Direction
  readonly tone?: Tone
}

export function letter(
  text: string,
  at: Point,
  height: Nm,
  options: LetteringOptions = {},
): Lettering {
  return {
    text,
    at,
    height,
    anchor: options.anchor ?? 'middle',
    along: inMillionths(options.along ?? EAST),
    tone: options.tone ?? 'plain',
  }
}

/** The ground that one line of lettering takes, with a little air around it. */
export function groundOf(lettering: Lettering): Ring {
  const along = { x: lettering.along.x / 1_000_000, y: lettering.along.y / 1_000_000 }
  const width = widthOf(lettering.text, lettering.height)
  const shift = { start: width / 2, middle: 0, end: -width / 2 }[lettering.anchor]
  const air = lettering.height * 0.3
  return plate(
    moved(lettering.at, along, shift),
    along,
    width + 2 * air,
    lettering.height + 2 * air,
  )
}

/** How much wider bold letters run, and a little to spare: nothing may leave the sheet. */
const BOLD = 1.16

export function isBold(tone: Tone): boolean {
  return tone === 'title' || tone === 'heading' || tone === 'alarm'
}

/** Breaks text between words into lines of at most `width`; a word too long stands alone. */
export function wrapped(text: string, height: Nm, tone: Tone, widest: Nm): string[] {
  const width = isBold(tone) ? widest / BOLD : widest
  const lines: string[] = []
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last} ${word}`
    if (last !== undefined && widthOf(longer, height) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
