/** Things of one name told apart by their number, so that every id is unlike any other of the list. */
export function ownIds<T extends { readonly id: string }>(items: readonly T[]): T[] {
  const counts = new Map<string, number>()
  const taken = new Set<string>()
  return items.map((item) => {
    let id = item.id
    while (taken.has(id)) {
      const count = (counts.get(item.id) ?? 1) + 1
      counts.set(item.id, count)
      id = `${item.id}, ${count}`
    }
    taken.add(id)
    return id === item.id ? item : { ...item, id }
  })
}
