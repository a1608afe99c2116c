import type { Nm } from '../../units/length.ts'
import { isBold } from '../drawing/letter.ts'
import type { Lettering, Tone } from '../scene.ts'
import { type Element, h } from './element.ts'
import { millionths, mm } from './number.ts'
import type { Pen } from './pen.ts'

const INK: Readonly<Record<Tone, 'ink' | 'softInk' | 'alarm'>> = {
  title: 'ink',
  heading: 'ink',
  plain: 'ink',
  quiet: 'softInk',
  alarm: 'alarm',
}

/** Down from the middle of the letters to the line they stand on, in parts of their height. */
const BASELINE = 0.36

/** One line of text. With a halo it stays legible over hatching. */
export function lettered(
  { place, palette }: Omit<Pen, 'em'>,
  { text, at, height, anchor, along, tone }: Lettering,
  halo: string | null = null,
): Element {
  const level = along.x === 1_000_000 && along.y === 0
  const { x, y } = place(at)
  const down = Math.round(height * BASELINE)
  return h(
    'text',
    {
      ...(level
        ? { x: mm(x), y: mm(y + down) }
        : { x: '0', y: mm(down), transform: turned(along, x, y) }),
      'font-size': mm(height),
      'text-anchor': anchor === 'start' ? null : anchor,
      'font-weight': isBold(tone) ? '600' : null,
      fill: palette[INK[tone]],
      ...haloed(halo, height),
    },
    text,
  )
}

function haloed(halo: string | null, height: Nm): Record<string, string> {
  return halo === null
    ? { stroke: 'none' }
    : {
        stroke: halo,
        'stroke-width': mm(height * 0.3),
        'stroke-linejoin': 'round',
        'paint-order': 'stroke',
      }
}

/** The turn as a matrix from the direction itself, so that no angle is ever needed. */
function turned(along: Lettering['along'], x: Nm, y: Nm): string {
  const [cos, sin] = [millionths(along.x), millionths(along.y)]
  return `matrix(${cos} ${millionths(-along.y)} ${sin} ${cos} ${mm(x)} ${mm(y)})`
}
