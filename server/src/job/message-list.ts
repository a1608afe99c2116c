import { type Message, message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'

/** Takes messages while a job is bound. */
export interface MessageList {
  readonly say: (message: Message) => void
  /**
   * Says it once for a key: when the same trouble comes again, its place joins the first message, so
   * that one damaged name gives one message however often it is used.
   */
  readonly sayOnce: (key: string, span: Span, make: () => Message) => void
  /** Says nothing for a key from now on: why is said elsewhere. */
  readonly hush: (key: string) => void
  readonly messages: () => readonly Message[]
}

/** More places of one trouble help nobody. */
const MOST_RELATED = 20
/** As for the reading of one file: more help nobody and cost memory. */
const MOST = 1000

/** Stands for the place of a message that is not said. */
const HUSHED = -1

/** Collects messages, at most a thousand; that some are left out is an error itself. */
export function openMessageList(): MessageList {
  const said: Message[] = []
  const keyed = new Map<string, number>()
  const say = (one: Message): void => {
    if (said.length < MOST) said.push(one)
    else if (said.length === MOST) said.push(cutAt(one.span))
  }
  const sayOnce = (key: string, span: Span, make: () => Message): void => {
    const at = keyed.get(key)
    const first = at === undefined ? undefined : said[at]
    if (at === undefined) {
      keyed.set(key, said.length)
      say(make())
    } else if (first !== undefined && first.related.length < MOST_RELATED) {
      said[at] = { ...first, related: [...first.related, { span, text: 'Here too.' }] }
    }
  }
  const hush = (key: string): void => {
    if (!keyed.has(key)) keyed.set(key, HUSHED)
  }
  return { say, sayOnce, hush, messages: () => said }
}

function cutAt(span: Span): Message {
  const text = `There is more to say, but ${MOST} messages are enough for one job. Mend some of them first.`
  return message('error', 'messages-cut', span, text)
}
