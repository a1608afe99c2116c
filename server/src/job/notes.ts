import type { Shelf } from '../facts/kept.ts'
import type { Message } from '../facts/message.ts'
import { same, sameThings } from '../facts/same.ts'
import type { Span } from '../facts/span.ts'
import type { Block, Entry } from '../language/tree.ts'
import type { Binding } from './binding.ts'

/**
 * What was asked of the job around a block while it was bound, with the answers, and what was said
 * meanwhile. Where the same questions have the same answers in a later run, the block comes to the same,
 * and the same is to be said. `Now` is the job around it in one run.
 */
export class Notes<Now> {
  private readonly asked: { readonly again: (now: Now) => unknown; readonly answer: unknown }[] = []
  private readonly steps: ((now: Now) => void)[] = []
  private isWhole = true

  /** Asks, and notes the question. It must change nothing. */
  ask<T>(now: Now, question: (now: Now) => T): T {
    const answer = question(now)
    this.asked.push({ again: question, answer })
    return answer
  }

  /** Does what is to be done again whenever the block is taken as it was. */
  step(now: Now, step: (now: Now) => void): void {
    step(now)
    this.later(step)
  }

  /** What is done already, to be done again so. */
  later(step: (now: Now) => void): void {
    this.steps.push(step)
  }

  /** Something was asked that hangs on too much: the block is bound anew in every run. */
  spoil(): void {
    this.isWhole = false
  }

  /** Whether all that was asked has the same answers now. */
  hold(now: Now): boolean {
    return this.isWhole && this.asked.every(({ again, answer }) => same(again(now), answer))
  }

  replay(now: Now): void {
    for (const step of this.steps) step(now)
  }
}

/** A block as it was bound in an earlier run: what it was given besides, what it asked, what it came to. */
interface Bound<Now, T> {
  readonly given: readonly unknown[]
  readonly notes: Notes<Now>
  readonly value: T
}

export type BlocksKept<Now, T> = Shelf<Block, Bound<Now, T>>

/**
 * A block bound, or taken as it was bound before. `given` is told from what was given then by identity;
 * all else that `make` asks of the job goes through the notes.
 */
export function boundAgain<Now, T>(
  kept: BlocksKept<Now, T> | undefined,
  block: Block,
  { given, now }: { readonly given: readonly unknown[]; readonly now: Now },
  make: (notes: Notes<Now> | null) => T,
): T {
  if (kept === undefined) return make(null)
  const before = kept.get(block)
  if (before !== undefined && sameThings(before.given, given) && before.notes.hold(now)) {
    before.notes.replay(now)
    return before.value
  }
  const notes = new Notes<Now>()
  const value = make(notes)
  kept.set(block, { given, notes, value })
  return value
}

/** The binding of a run; a function of its own file, so that it holds on to nothing. */
type Of<Now> = (now: Now) => Binding

/** For a block to which the job around it is the binding alone. */
export const itself = (now: Binding): Binding => now

/** A binding that notes what is asked of it and said to it; it itself where nothing is noted. */
export function noting<Now>(notes: Notes<Now> | null, now: Now, of: Of<Now>): Binding {
  if (notes === null) return of(now)
  const binding = of(now)
  let isAsked = false
  const askUnits = () => {
    if (!isAsked) notes.ask(now, unitsNow(of))
    isAsked = true
  }
  return {
    units: binding.units,
    length: (nm) => {
      askUnits()
      return binding.length(nm)
    },
    samples: (text) => {
      askUnits()
      return binding.samples(text)
    },
    say: (message) => notes.step(now, say(of, message)),
    sayOnce: (key, span, make) => {
      let made: Message | null = null
      binding.sayOnce(key, span, () => {
        made = make()
        return made
      })
      // Said already of another block: what would be said of this one is not known.
      if (made === null) notes.spoil()
      else notes.later(sayOnce(of, key, span, made))
    },
    hush: (key) => notes.step(now, hush(of, key)),
    place: (span, from) => notes.ask(now, placeNow(of, span, from)),
    text: (span) => notes.ask(now, textNow(of, span)),
    tape: (file) => notes.ask(now, tapeNow(of, file)),
    isWrong: (entry) => entry.broken && notes.ask(now, isWrongNow(of, entry)),
    mayBeUnread: (kind) => notes.ask(now, mayBeUnreadNow(of, kind)),
    nearest: (name, known) => {
      notes.spoil()
      return binding.nearest(name, known)
    },
  }
}

// What is noted is made out here and not where it is noted: there it would hold on to the job of its own
// run, and so keep a whole version in memory for each block.

const say =
  <Now>(of: Of<Now>, message: Message) =>
  (now: Now): void =>
    of(now).say(message)

const sayOnce =
  <Now>(of: Of<Now>, key: string, span: Span, message: Message) =>
  (now: Now): void =>
    of(now).sayOnce(key, span, () => message)

const hush =
  <Now>(of: Of<Now>, key: string) =>
  (now: Now): void =>
    of(now).hush(key)

const unitsNow =
  <Now>(of: Of<Now>) =>
  (now: Now) =>
    of(now).units

const placeNow =
  <Now>(of: Of<Now>, span: Span, from: Span) =>
  (now: Now) =>
    of(now).place(span, from)

const textNow =
  <Now>(of: Of<Now>, span: Span) =>
  (now: Now) =>
    of(now).text(span)

const tapeNow =
  <Now>(of: Of<Now>, file: string) =>
  (now: Now) =>
    of(now).tape(file)

const isWrongNow =
  <Now>(of: Of<Now>, entry: Entry) =>
  (now: Now) =>
    of(now).isWrong(entry)

const mayBeUnreadNow =
  <Now>(of: Of<Now>, kind: 'room' | 'product') =>
  (now: Now) =>
    of(now).mayBeUnread(kind)
