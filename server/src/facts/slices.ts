/**
 * Work that pauses now and then, after so many steps and never after so much time, so that its caller
 * may see to others in between or leave it: what it comes to never depends on that.
 */
export type Sliced<T> = Generator<void, T, void>

/** The work done in one go. */
export function inOneGo<T>(work: Sliced<T>): T {
  for (;;) {
    const slice = work.next()
    if (slice.done) return slice.value
  }
}
