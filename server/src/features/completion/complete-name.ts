import type { Part } from '../../language/forms.ts'
import { jobIndex } from '../names/job-index.ts'
import type { Continued } from '../place/continued.ts'
import { holdsInOrder } from '../writing/holds-in-order.ts'
import { type Insert, joined, text } from '../writing/insert.ts'
import { writtenName } from '../writing/written-name.ts'
import { type Completion, MOST_OFFERS } from './completion-item.ts'
import { formInsert } from './form-insert.ts'
import type { NameChoice } from './name-choice.ts'
import { choicesFor, fillingOf, type OfferPlace, spanOf } from './offer-place.ts'
import { roomsListed } from './room-choices.ts'
import { clearNames } from './wall-choices.ts'

/** What a form still lacks, of which the part at `lead` is a name and those before it are words. */
export interface NameToCome {
  readonly parts: readonly Part[]
  readonly lead: number
  readonly continued: Continued
}

/** An offer for each name that may stand there; none where any name may. */
export function nameOffers(to: NameToCome, place: OfferPlace): readonly Completion[] {
  const { parts, lead, continued } = to
  const { form, next } = continued
  const part = parts[lead] as Extract<Part, { kind: 'name' }>
  const position = form.parts.slice(0, next + lead).filter(({ kind }) => kind === 'name').length
  const isPair = part.wanted === 'WALL' && isWallOfRoom(parts.slice(lead))
  const choices = isPair ? wallsOfRooms(place) : choicesFor(part.wanted, position, form, place)
  return fewEnough(choices, to, place).map((choice) => nameOffer(choice, to, isPair, place))
}

/** Of more than are shown only those that hold what is typed: to write all of them takes too long. */
function fewEnough(
  choices: readonly NameChoice[],
  { parts, lead, continued }: NameToCome,
  place: OfferPlace,
): readonly NameChoice[] {
  if (choices.length <= MOST_OFFERS) return choices
  const { view, offset } = place.scope
  const typed = view.tree.text.slice(spanOf(continued, place).start, offset)
  const sought = typed.replace(/^"/, '').trimEnd().toLowerCase()
  if (sought === '') return choices.slice(0, MOST_OFFERS + 1)
  const before = wordsOf(parts.slice(0, lead)).join(' ')
  return choices
    .filter(({ name }) => holdsInOrder(`${before} ${name}`.toLowerCase(), sought))
    .slice(0, MOST_OFFERS + 1)
}

function nameOffer(
  { name, of, kind, detail }: NameChoice,
  { parts, lead, continued }: NameToCome,
  isPair: boolean,
  place: OfferPlace,
): Completion {
  const { form } = continued
  const written =
    of === undefined ? writtenName(name) : `${writtenName(name)} of ${writtenName(of)}`
  const rest = parts.slice(lead + (isPair ? 3 : 1))
  const after = rest.length === 0 ? [] : formInsert(rest, fillingOf(place, form, name))
  const before = wordsOf(parts.slice(0, lead))
  const whole: Insert = [
    text([...before, written].join(' ')),
    ...(rest.length === 0 ? [] : [text(' ')]),
    ...after,
  ]
  return {
    label: [...before, of === undefined ? name : `${name} of ${of}`].join(' '),
    kind,
    detail,
    insert: joined(whole),
    span: spanOf(continued, place),
    filter: [...before, written].join(' '),
    likely: false,
  }
}

function wordsOf(parts: readonly Part[]): readonly string[] {
  return parts.flatMap((part) => (part.kind === 'words' ? part.words : []))
}

function isWallOfRoom([, of, room]: readonly Part[]): boolean {
  return of?.kind === 'words' && of.words[0] === 'of' && room?.kind === 'name'
}

/** `north of hall`: each clear wall of each room that the floor lists; of other rooms in a tie. */
function wallsOfRooms({ scope }: OfferPlace): readonly NameChoice[] {
  const { rooms } = jobIndex(scope.view.measured)
  const { block } = scope
  if (block === null) return []
  const keys = block.word === 'floor' ? roomsListed(block) : [...rooms.keys()]
  return keys.flatMap((key) => {
    const room = rooms.get(key)
    if (room === undefined || (block.word === 'room' && key === block.name?.key)) return []
    return [...clearNames(room)].map(([wall, name]): NameChoice => {
      const detail = `A wall of ${room.name.text}, read ${wall.reading.text}.`
      return { name, of: room.name.text, kind: 'wall', detail }
    })
  })
}
