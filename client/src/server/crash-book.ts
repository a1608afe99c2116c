import type { Death } from './server.ts'

/**
 * What is known of the server's deaths, as a value: it never gives up, waits a little longer after each
 * fault, and finds out which file the server cannot stand. Who was put down from outside did no wrong.
 */
export interface CrashBook {
  /** When it fell of itself, lately, in milliseconds. */
  readonly fallsMs: readonly number[]
  /** What it has been sent and not answered yet, and the file that each is about. */
  readonly inWork: ReadonlyMap<string, string>
  /** When it fell with a file in work, lately. */
  readonly seenMs: ReadonlyMap<string, readonly number[]>
  /** Files that are read and no longer counted. */
  readonly onlyRead: ReadonlySet<string>
}

export type WorkEvent =
  | { readonly kind: 'sent'; readonly task: string; readonly file: string }
  | { readonly kind: 'answered'; readonly task: string }
  /** A person wants it all tried again. */
  | { readonly kind: 'restarted' }

/** What is to be done after a death. */
export interface Revival {
  readonly waitMs: number
  /** Files that are only read from now on. */
  readonly newlyOnlyRead: readonly string[]
}

/** After the first fall at once, then longer and longer. */
const WAITS_MS = [0, 1_000, 2_000, 5_000, 15_000, 60_000]
/** Falls further back have nothing to do with each other. */
const LATELY_MS = 180_000
/** A file that was in work at this many falls is taken for their cause. */
const ENOUGH_FALLS = 2

export const NO_CRASHES: CrashBook = {
  fallsMs: [],
  inWork: new Map(),
  seenMs: new Map(),
  onlyRead: new Set(),
}

/** The book after work was given or done. */
export function noted(book: CrashBook, event: WorkEvent): CrashBook {
  switch (event.kind) {
    case 'sent':
      return { ...book, inWork: new Map(book.inWork).set(event.task, event.file) }
    case 'answered':
      return { ...book, inWork: new Map([...book.inWork].filter(([task]) => task !== event.task)) }
    case 'restarted':
      return NO_CRASHES
  }
}

/** The book after a death, and what is to be done about it. */
export function buried(
  book: CrashBook,
  death: Death,
  atMs: number,
): { readonly book: CrashBook; readonly revival: Revival } {
  const idle = { ...book, inWork: new Map<string, string>() }
  if (death === 'from outside') return { book: idle, revival: { waitMs: 0, newlyOnlyRead: [] } }
  const files = new Set(book.inWork.values())
  const fallsMs = [...lately(book.fallsMs, atMs), atMs]
  const seenMs = new Map(book.seenMs)
  for (const file of files) seenMs.set(file, [...lately(seenMs.get(file) ?? [], atMs), atMs])
  const newlyOnlyRead = [...files].filter(
    (file) => !book.onlyRead.has(file) && (seenMs.get(file)?.length ?? 0) >= ENOUGH_FALLS,
  )
  const waitMs = WAITS_MS[Math.min(fallsMs.length, WAITS_MS.length) - 1] ?? 0
  const onlyRead = new Set([...book.onlyRead, ...newlyOnlyRead])
  return { book: { ...idle, fallsMs, seenMs, onlyRead }, revival: { waitMs, newlyOnlyRead } }
}

function lately(timesMs: readonly number[], nowMs: number): readonly number[] {
  return timesMs.filter((timeMs) => nowMs - timeMs < LATELY_MS)
}
