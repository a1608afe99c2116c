/** Whether a value that came from elsewhere is what it should be. */
export type Check<T> = (value: unknown) => value is T

export const isText: Check<string> = (value): value is string => typeof value === 'string'

/** No length, place or count of ours is anything but a finite number. */
export const isNumber: Check<number> = (value): value is number => Number.isFinite(value)

export const isFlag: Check<boolean> = (value): value is boolean => typeof value === 'boolean'

export function isOneOf<const T extends string | null>(...values: readonly T[]): Check<T> {
  const known = new Set<unknown>(values)
  return (value): value is T => known.has(value)
}

export function isList<T>(item: Check<T>): Check<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.every(item)
}

export function isPair<T>(item: Check<T>): Check<readonly [T, T]> {
  return (value): value is readonly [T, T] =>
    Array.isArray(value) && value.length === 2 && value.every(item)
}

export function orNull<T>(item: Check<T>): Check<T | null> {
  return (value): value is T | null => value === null || item(value)
}

export function either<A, B>(a: Check<A>, b: Check<B>): Check<A | B> {
  return (value): value is A | B => a(value) || b(value)
}

/** Every field is there and is what it should be; others may stand beside them and are not looked at. */
export function isRecord<T extends object>(
  fields: { readonly [K in keyof T]-?: Check<T[K]> },
): Check<T> {
  const entries = Object.entries(fields) as [string, Check<unknown>][]
  return (value): value is T =>
    typeof value === 'object' &&
    value !== null &&
    entries.every(([name, check]) => Object.hasOwn(value, name) && check(Reflect.get(value, name)))
}

/** One of several records that are told apart by the text in one of their fields. */
export function isVariant<T extends object>(
  tag: keyof T & string,
  variants: ReadonlyMap<string, Check<T>>,
): Check<T> {
  return (value): value is T => {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, tag)) return false
    const name: unknown = Reflect.get(value, tag)
    return typeof name === 'string' && variants.get(name)?.(value) === true
  }
}
