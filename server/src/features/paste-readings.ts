import type { Span } from '../facts/span.ts'
import { tapeOptionsIn } from '../language/units-line.ts'
import { at } from './place/at.ts'
import { entriesIn } from './place/entries.ts'
import type { Edit, View } from './view.ts'
import { readMeterList } from './writing/meter-list.ts'

/** What comes of a pasted text: edits with a sentence about them, a refusal, or an ordinary paste. */
export type PastedReadings =
  | { readonly kind: 'none' }
  | { readonly kind: 'filled'; readonly edits: readonly Edit[]; readonly said: string }
  | { readonly kind: 'refused'; readonly why: string }

/**
 * Puts a meter's list of readings into the blanks (`?`) of the room at the cursor, in written order. `none`
 * where the text is no list of readings, or the cursor is in no room: it is pasted as it is. More readings
 * than blanks are refused, for nobody knows which one is too many; fewer fill the first.
 */
export function pasteReadings(view: View, offset: number, pasted: string): PastedReadings {
  const { block } = at(view.tree, offset)
  if (block?.word !== 'room') return { kind: 'none' }
  const blanks: readonly Span[] = entriesIn(block)
    .flatMap(({ phrases }) => phrases.flatMap(({ measures }) => measures))
    .flatMap(({ figure, span }) => (figure.kind === 'asked' ? [span] : []))
  const list = readMeterList(pasted, tapeOptionsIn(view.tree))
  if (list.kind === 'none') return { kind: 'none' }
  if (list.kind === 'refused')
    return blanks.length === 0
      ? { kind: 'none' }
      : { kind: 'refused', why: `${list.why} Nothing was filled in.` }
  const { texts } = list
  if (texts.length < 2) return { kind: 'none' }
  const name = block.name?.text ?? 'this room'
  if (blanks.length === 0) {
    const why = `Nothing was filled in: ${name} has no blank. Write "?" where a reading is to go.`
    return { kind: 'refused', why }
  }
  const [readings, places] = [counted(texts.length, 'reading'), counted(blanks.length, 'blank')]
  if (texts.length > blanks.length) {
    const why = `The list has ${readings}, and ${name} has ${places}. Nothing was filled in: take out of the list what is none of them.`
    return { kind: 'refused', why }
  }
  const edits = texts.map((text, i) => ({ span: blanks[i]!, text }))
  const left = blanks.length - texts.length
  const rest = left === 0 ? '' : ` ${counted(left, 'blank')} ${left === 1 ? 'is' : 'are'} left.`
  return { kind: 'filled', edits, said: `${readings} filled into ${name}, in order.${rest}` }
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`
}
