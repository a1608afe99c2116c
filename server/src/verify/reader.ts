/**
 * Readers for JSON of unknown origin: each takes any value whatever and gives it back as what it
 * should be, or undefined after saying, with its path, what is wrong. A reader copies what it reads,
 * so that nothing later can change under the proof, and none throws.
 */
export type Reader<T> = (value: unknown, path: string, wrong: string[]) => T | undefined

/** What a reader reads. */
export type Read<R> = R extends Reader<infer T> ? T : never

/** Values of a thousand kilometres and over are refused: below, sums of eight are still exact. */
export const FARTHEST = 1_000_000_000_000_000

/** After so many wrong values a list is read no further: a file of another kind is wrong throughout. */
const ENOUGH = 100

export function whole(least = -FARTHEST, most = FARTHEST): Reader<number> {
  return (value, path, wrong) => {
    if (typeof value !== 'number' || !Number.isSafeInteger(value)) {
      return refuse(value, path, wrong, 'a whole number')
    }
    if (value < least || value > most) {
      return refuse(value, path, wrong, `a whole number from ${least} to ${most}`)
    }
    return value
  }
}

export const text: Reader<string> = (value, path, wrong) =>
  typeof value === 'string' ? value : refuse(value, path, wrong, 'a text')

export const flag: Reader<boolean> = (value, path, wrong) =>
  typeof value === 'boolean' ? value : refuse(value, path, wrong, 'true or false')

/** One of a few words or numbers. */
export function oneOf<const T extends string | number>(...choices: readonly T[]): Reader<T> {
  return (value, path, wrong) =>
    choices.find((choice) => choice === value) ??
    refuse(value, path, wrong, choices.map((choice) => JSON.stringify(choice)).join(' or '))
}

export function orNull<T>(read: Reader<T>): Reader<T | null> {
  return (value, path, wrong) => (value === null ? null : read(value, path, wrong))
}

/** A list of any length, at least `least`. */
export function list<T>(read: Reader<T>, least = 0): Reader<readonly T[]> {
  return (value, path, wrong) => {
    if (!Array.isArray(value)) return refuse(value, path, wrong, 'a list')
    if (value.length < least) {
      wrong.push(`${path} has ${value.length} entries; at least ${least} are wanted.`)
      return undefined
    }
    return whenClean(wrong, () => {
      const items: T[] = []
      for (let i = 0; i < value.length && wrong.length < ENOUGH; i += 1) {
        items.push(read(value[i], `${path}[${i}]`, wrong) as T)
      }
      return items
    })
  }
}

/** A list of exactly two. */
export function pair<T>(read: Reader<T>): Reader<readonly [T, T]> {
  return (value, path, wrong) => {
    if (!Array.isArray(value) || value.length !== 2) {
      return refuse(value, path, wrong, 'a list of two')
    }
    return whenClean(wrong, () => [
      read(value[0], `${path}[0]`, wrong) as T,
      read(value[1], `${path}[1]`, wrong) as T,
    ])
  }
}

/** An object with these keys of its own; further keys are left unread. */
export function record<F extends Record<string, Reader<unknown>>>(
  fields: F,
): Reader<{ readonly [K in keyof F]: Read<F[K]> }> {
  const readers = Object.entries(fields)
  return (value, path, wrong) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      return refuse(value, path, wrong, 'an object')
    }
    const own = new Map<string, unknown>(Object.entries(value))
    return whenClean(wrong, () =>
      Object.fromEntries(
        readers.map(([key, read]) => [
          key,
          read(own.get(key), path === '' ? key : `${path}.${key}`, wrong),
        ]),
      ),
    ) as { readonly [K in keyof F]: Read<F[K]> } | undefined
  }
}

/** The value that `build` makes, unless something in it was wrong. */
function whenClean<T>(wrong: readonly string[], build: () => T): T | undefined {
  const before = wrong.length
  const built = build()
  return wrong.length === before ? built : undefined
}

function refuse(value: unknown, path: string, wrong: string[], wanted: string): undefined {
  wrong.push(`${path === '' ? 'The file' : path} is ${shown(value)}; ${wanted} is wanted.`)
  return undefined
}

/** A value as a message may show it: short, and in letters that no screen takes for a command. */
function shown(value: unknown): string {
  if (value === undefined) return 'missing'
  if (value === null || typeof value === 'boolean' || typeof value === 'number') return `${value}`
  if (typeof value === 'string') {
    return `"${value.slice(0, 30).replace(/[^ -~]/g, '?')}${value.length > 30 ? '…' : ''}"`
  }
  return Array.isArray(value) ? `a list of ${value.length}` : `an ${typeof value}`
}
