import { isWay } from '../../job/ways.ts'
import { compileForm, type Form, type Part } from '../../language/forms.ts'
import { printLength } from '../../units/print.ts'
import { type Continued, continuations } from '../place/continued.ts'
import type { LineScope } from '../place/line-scope.ts'
import { typedPhrase } from '../place/typed-phrase.ts'
import { formSays } from '../words/form-says.ts'
import { READING, text } from '../writing/insert.ts'
import { unitMarks } from '../writing/length-marks.ts'
import { nameOffers } from './complete-name.ts'
import type { Completion } from './completion-item.ts'
import { formInsert, formLabel } from './form-insert.ts'
import { nextWalls } from './next-wall.ts'
import { fillingOf, type OfferPlace, spanOf } from './offer-place.ts'

/** What may go on at a cursor behind the first word of a line of phrases or names. */
export function completePhrase(scope: LineScope): readonly Completion[] {
  const entered = scope.entered!
  const typed = typedPhrase(entered, scope.rest, scope.offset)
  if (typed === null) return []
  const { takes, word, many, needs } = entered.word
  if (takes === 'name' && typed.index > 0) return []
  const forms = takes === 'phrases' ? entered.forms : [compileForm('NAME')]
  const isFree = (form: Form): boolean =>
    takes === 'names' || !typed.met.includes(form.text) || many?.includes(form.text) === true
  const isNeeded = (form: Form): boolean => needs?.includes(form.text) === true
  const open = forms.filter(isFree)
  const inOrder = [...open.filter(isNeeded), ...open.filter((form) => !isNeeded(form))]
  const offers = inOrder
    .flatMap((form) => continuations(form, typed.items, typed.isTouched))
    .flatMap((continued) => offersFor(continued, { scope, word }))
  return onlyOnce(offers)
}

function onlyOnce(offers: readonly Completion[]): readonly Completion[] {
  return [
    ...new Map(offers.toReversed().map((offer) => [offer.label, offer])).values(),
  ].toReversed()
}

function offersFor(continued: Continued, place: OfferPlace): readonly Completion[] {
  const parts = continued.form.parts.slice(continued.next)
  const [part] = parts
  if (part?.kind === 'figure' && continued.typed.length > 0) {
    return part.wanted === 'LENGTH' || part.wanted === 'SIZE' ? marksFor(continued, place) : []
  }
  const lead = parts.findIndex((one) => one.kind !== 'words')
  if (lead < 0) return [phraseOffer(parts, continued, place)]
  const open = parts[lead]!
  if (open.kind === 'choice') {
    return open.options.map((option) =>
      phraseOffer(parts.with(lead, { kind: 'choice', options: [option] }), continued, place),
    )
  }
  if (open.kind === 'figure') return [figureOffer(parts, continued, place)]
  const names = nameOffers({ parts, lead, continued }, place)
  // Behind a word any name may be given; alone it is for the writer to begin.
  return names.length > 0 || lead === 0 ? names : [phraseOffer(parts, continued, place)]
}

function phraseOffer(parts: readonly Part[], continued: Continued, place: OfferPlace): Completion {
  const { form } = continued
  const label = formLabel({ parts })
  return {
    label,
    kind: 'phrase',
    detail: formSays(place.word, form.text) ?? `${place.word} takes this.`,
    insert: formInsert(parts, fillingOf(place, form)),
    span: spanOf(continued, place),
    filter: label,
    likely: false,
  }
}

/** A form that begins with a figure: a reading is `?` until it is taken. */
function figureOffer(parts: readonly Part[], continued: Continued, place: OfferPlace): Completion {
  const offer = phraseOffer(parts, continued, place)
  if (continued.form.text !== 'LENGTH') return offer
  const expected = expectedLength(place.scope)
  const detail =
    expected === null
      ? 'A reading that is still to be taken.'
      : `To be read. From the other walls it should come to about ${expected}.`
  return { ...offer, label: '?', filter: '?', kind: 'reading', detail, insert: [READING] }
}

/** What the last wall of a room should come to by the others, for people; null for any other reading. */
function expectedLength({ view, block, line, entered }: LineScope): string | null {
  const word = entered?.word.word ?? ''
  if (block === null || block.word !== 'room' || !isWay(word)) return null
  const wall = nextWalls(block, line.span.start).find(({ way }) => way === word)
  return wall?.closes == null ? null : printLength(wall.closes, view.measured.job.units)
}

/** The figure with each mark that makes it a length. */
function marksFor(continued: Continued, place: OfferPlace): readonly Completion[] {
  const item = continued.typed[0]
  if (item?.kind !== 'measure' || item.measure.by !== null) return []
  const figure = item.measure.first.image
  const span = { ...spanOf(continued, place), start: item.end - figure.length }
  return unitMarks(figure, place.scope.tape).map(({ text: length, says }) => ({
    label: length,
    kind: 'unit',
    detail: says,
    insert: [text(length)],
    span,
    filter: length,
    likely: false,
  }))
}
