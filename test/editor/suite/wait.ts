/** Long enough for a slow machine with other work; a wait that is met ends at once. */
const PATIENCE_MS = 30_000

/** Looks again until what is asked for is there; throws the sentence, and what was there last. */
export async function until<T>(
  what: string,
  look: () => T | undefined | null | false | Promise<T | undefined | null | false>,
): Promise<T> {
  const end = Date.now() + PATIENCE_MS
  for (;;) {
    const seen = await look()
    if (seen !== undefined && seen !== null && seen !== false) return seen
    if (Date.now() > end) throw new Error(`waited in vain until ${what}`)
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
}

export function check(what: string, isSo: boolean, otherwise: unknown = ''): void {
  if (!isSo) throw new Error(`not so: ${what}${otherwise === '' ? '' : `; ${show(otherwise)}`}`)
}

function show(value: unknown): string {
  return typeof value === 'string' ? value : JSON.stringify(value)
}
