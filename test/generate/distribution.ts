/** How often each feature occurs, grouped by what stands before its colon, as lines for people. */
export function distribution(features: readonly string[]): string {
  const counts = new Map<string, number>()
  for (const feature of features) counts.set(feature, (counts.get(feature) ?? 0) + 1)
  const groups = new Map<string, string[]>()
  for (const [feature, count] of [...counts].sort((a, b) => b[1] - a[1])) {
    const [group = '', name = ''] = feature.split(': ')
    groups.set(group, [...(groups.get(group) ?? []), `${name} ${count}`])
  }
  return [...groups].map(([group, names]) => `${group.padEnd(10)} ${names.join(', ')}`).join('\n')
}
