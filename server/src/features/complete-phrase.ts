import type { Span } from '../facts/span.ts'
import { isWay } from '../job/ways.ts'
import { compileForm, type Form, type NameWanted, type Part } from '../language/forms.ts'
import type { Item } from '../language/grammar.ts'
import { tapeOptionsIn } from '../language/units-line.ts'
import { printLength } from '../units/print.ts'
import type { Completion, CompletionKind } from './completion-item.ts'
import { type Continued, continuations } from './continued.ts'
import { type Filling, formInsert, formLabel } from './form-insert.ts'
import { formSays } from './form-says.ts'
import { type Insert, joined, READING, text } from './insert.ts'
import { jobIndex } from './job-index.ts'
import { unitMarks } from './length-marks.ts'
import type { LineScope } from './line-scope.ts'
import { clearName, type NameChoice, nameChoices, roomsListed } from './name-choices.ts'
import { nextWalls } from './next-wall.ts'
import { typedPhrase } from './typed-phrase.ts'
import { writtenName } from './written-name.ts'

/** What may go on at a cursor behind the first word of a line of phrases or names. */
export function completePhrase(scope: LineScope): readonly Completion[] {
  const entered = scope.entered!
  const typed = typedPhrase(entered, scope.rest, scope.offset)
  if (typed === null) return []
  const { takes, word, many, needs } = entered.word
  const forms = takes === 'phrases' ? entered.forms : [compileForm('NAME')]
  const isFree = (form: Form): boolean =>
    takes === 'names' || !typed.met.includes(form.text) || many?.includes(form.text) === true
  if (takes === 'name' && typed.index > 0) return []
  const isNeeded = (form: Form): boolean => needs?.includes(form.text) === true
  const open = forms.filter(isFree)
  const inOrder = [...open.filter(isNeeded), ...open.filter((form) => !isNeeded(form))]
  const offers = inOrder
    .flatMap((form) => continuations(form, typed.items, typed.isTouched))
    .flatMap((continued) => offersFor(continued, { scope, word }))
  return onlyOnce(offers)
}

interface Place {
  readonly scope: LineScope
  readonly word: string
}

function onlyOnce(offers: readonly Completion[]): readonly Completion[] {
  return [
    ...new Map(offers.toReversed().map((offer) => [offer.label, offer])).values(),
  ].toReversed()
}

function offersFor(continued: Continued, place: Place): readonly Completion[] {
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
  if (open.kind === 'name') return nameOffers(parts, lead, continued, place)
  return [figureOffer(parts, continued, place)]
}

/** Where what is typed of a part stands; at the cursor where nothing is. */
function spanOf({ typed }: Continued, { scope }: Place): Span {
  const { file } = scope.view
  const start = typed[0]?.start ?? scope.offset
  return { file, start, end: Math.max(scope.offset, endOfWord(typed.at(-1), scope)) }
}

const IN_WORD = /[\p{L}\p{Nd}'’-]/u

/** A word is replaced to its end, where the cursor stands inside it. */
function endOfWord(last: Item | undefined, { offset, rest }: LineScope): number {
  if (last === undefined || last.kind === 'measure' || last.end !== offset) return offset
  let end = offset - rest.start
  while (end < rest.text.length && IN_WORD.test(rest.text.charAt(end))) end += 1
  return rest.start + end
}

/** What the places behind a name are filled from: the name itself not again, but first what lies across. */
function fillingOf(place: Place, form: Form, chosen = ''): Filling {
  const { scope } = place
  const names = (wanted: NameWanted): readonly string[] =>
    across(
      choicesFor(wanted, 1, form, place).map(({ name }) => writtenName(name)),
      chosen,
    )
  return { style: tapeOptionsIn(scope.view.tree).style, names }
}

/** Walls and corners stand in their order round the room: half the way round is across. */
function across(names: readonly string[], chosen: string): readonly string[] {
  const at = names.indexOf(chosen)
  if (at < 0) return names
  const others = [...names.slice(at + 1), ...names.slice(0, at)]
  const middle = Math.floor((others.length - 1) / 2)
  return [...others.slice(middle, middle + 1), ...others.toSpliced(middle, 1)]
}

function choicesFor(
  wanted: NameWanted,
  position: number,
  form: Form,
  { scope, word }: Place,
): readonly NameChoice[] {
  const { view, block, offset, said } = scope
  if (block === null) return []
  return nameChoices(wanted, { view, block, word, form: form.text, position, offset, said })
}

function phraseOffer(parts: readonly Part[], continued: Continued, place: Place): Completion {
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
function figureOffer(parts: readonly Part[], continued: Continued, place: Place): Completion {
  const offer = phraseOffer(parts, continued, place)
  const isReading = continued.form.text === 'LENGTH'
  if (!isReading) return offer
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

function nameOffers(
  parts: readonly Part[],
  lead: number,
  continued: Continued,
  place: Place,
): readonly Completion[] {
  const { form, next } = continued
  const part = parts[lead] as Extract<Part, { kind: 'name' }>
  const position = form.parts.slice(0, next + lead).filter(({ kind }) => kind === 'name').length
  const isPair = part.wanted === 'WALL' && isWallOfRoom(parts.slice(lead))
  const choices = isPair
    ? wallsOfRooms(place)
    : choicesFor(part.wanted, position, form, place).map(asOne)
  const before = formInsert(parts.slice(0, lead), fillingOf(place, form))
  const rest = parts.slice(lead + (isPair ? 3 : 1))
  const offer = (written: string, put: Insert, kind: CompletionKind, detail: string) => {
    const label = [...words(parts.slice(0, lead)), written].join(' ')
    const gap = lead === 0 ? [] : [text(' ')]
    const after = formInsert(rest, fillingOf(place, form, written))
    return {
      label,
      kind,
      detail,
      insert: joined([
        ...before,
        ...gap,
        ...put,
        ...(rest.length === 0 ? [] : [text(' ')]),
        ...after,
      ]),
      span: spanOf(continued, place),
      filter: label,
      likely: false,
    }
  }
  const offers = choices.map(({ label, written, kind, detail }) => ({
    ...offer(written, [text(written)], kind, detail),
    label: [...words(parts.slice(0, lead)), label].join(' '),
  }))
  return offers.length > 0 || lead === 0 ? offers : [phraseOffer(parts, continued, place)]
}

interface Written {
  readonly label: string
  readonly written: string
  readonly kind: CompletionKind
  readonly detail: string
}

function asOne({ name, kind, detail }: NameChoice): Written {
  return { label: name, written: writtenName(name), kind, detail }
}

function words(parts: readonly Part[]): readonly string[] {
  return parts.flatMap((part) => (part.kind === 'words' ? part.words : []))
}

function isWallOfRoom([, of, room]: readonly Part[]): boolean {
  return of?.kind === 'words' && of.words[0] === 'of' && room?.kind === 'name'
}

/** `north of hall`: each clear wall of each room that the floor lists; of other rooms in a tie. */
function wallsOfRooms({ scope }: Place): readonly Written[] {
  const { rooms } = jobIndex(scope.view.measured)
  const { block } = scope
  if (block === null) return []
  const keys = block.word === 'floor' ? roomsListed(block) : [...rooms.keys()]
  return keys.flatMap((key) => {
    const room = rooms.get(key)
    if (room === undefined || (block.word === 'room' && key === block.name?.key)) return []
    return room.walls.flatMap((wall): readonly Written[] => {
      const name = clearName(room, wall)
      if (name === null) return []
      const detail = `A wall of ${room.name.text}, read ${wall.reading.text}.`
      const written = `${writtenName(name)} of ${writtenName(room.name.text)}`
      return [{ label: `${name} of ${room.name.text}`, written, kind: 'wall', detail }]
    })
  })
}

/** The figure with each mark that makes it a length. */
function marksFor(continued: Continued, place: Place): readonly Completion[] {
  const item = continued.typed[0]
  if (item?.kind !== 'measure') return []
  const figure = item.measure.by === null ? item.measure.first : null
  if (figure === null) return []
  const span = { ...spanOf(continued, place), start: item.end - figure.image.length }
  return unitMarks(figure.image, tapeOptionsIn(place.scope.view.tree)).map(
    ({ text: length, says }) => ({
      label: length,
      kind: 'unit',
      detail: says,
      insert: [text(length)],
      span,
      filter: length,
      likely: false,
    }),
  )
}
