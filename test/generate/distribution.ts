/** How often each thing occurs. */
export function countsOf(things: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const thing of things) counts.set(thing, (counts.get(thing) ?? 0) + 1)
  return counts
}

/** How often each feature occurs, grouped by what stands before its colon, as lines for people. */
export function distribution(features: readonly string[]): string {
  const groups = new Map<string, string[]>()
  for (const [feature, count] of [...countsOf(features)].sort((a, b) => b[1] - a[1])) {
    const [group = '', name = ''] = feature.split(': ')
    groups.set(group, [...(groups.get(group) ?? []), `${name} ${count}`])
  }
  return [...groups].map(([group, names]) => `${group.padEnd(12)} ${names.join(', ')}`).join('\n')
}
