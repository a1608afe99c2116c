import type { Shelf } from '../facts/kept.ts'
import { same, sameThings } from '../facts/same.ts'
import type { Block } from '../language/tree.ts'
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

/** A binding that notes what is asked of it and said to it; it itself where nothing is noted. */
export function noting<Now>(
  notes: Notes<Now> | null,
  now: Now,
  of: (now: Now) => Binding,
): Binding {
  if (notes === null) return of(now)
  const binding = of(now)
  const ask = <T>(question: (binding: Binding) => T): T =>
    notes.ask(now, (then) => question(of(then)))
  let isAsked = false
  const askUnits = () => {
    if (!isAsked) ask((then) => then.units)
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
    say: (message) => notes.step(now, (then) => of(then).say(message)),
    sayOnce: (key, span, make) => {
      let made: ReturnType<typeof make> | null = null
      const once = () => {
        made ??= make()
        return made
      }
      notes.step(now, (then) => of(then).sayOnce(key, span, once))
      // Said here already of another block: what would be said of this one is not known.
      if (made === null) notes.spoil()
    },
    hush: (key) => notes.step(now, (then) => of(then).hush(key)),
    place: (span, from) => ask((then) => then.place(span, from)),
    text: (span) => ask((then) => then.text(span)),
    tape: (file) => ask((then) => then.tape(file)),
    isWrong: (entry) => entry.broken && ask((then) => then.isWrong(entry)),
    mayBeUnread: (kind) => ask((then) => then.mayBeUnread(kind)),
    nearest: (name, known) => {
      notes.spoil()
      return binding.nearest(name, known)
    },
  }
}
