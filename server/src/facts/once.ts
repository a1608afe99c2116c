/** A function of things that do not change, which looks at each of them once. */
export function once<Thing extends object, Found>(
  look: (thing: Thing) => Found,
): (thing: Thing) => Found {
  const known = new WeakMap<Thing, { readonly found: Found }>()
  return (thing) => {
    const before = known.get(thing)
    if (before !== undefined) return before.found
    const found = look(thing)
    known.set(thing, { found })
    return found
  }
}
