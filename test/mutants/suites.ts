/**
 * For each folder of the source, the suites that should notice a mutant of it, the quickest first: a
 * mutant is done with at the first test that fails. Suites of chance, of size and of the bundle are left
 * out, since they would be had again for every mutant.
 */
const SUITES: ReadonlyMap<string, readonly string[]> = new Map([
  ['units', ['test/units/*.test.ts']],
  ['geometry', ['test/geometry/*.test.ts']],
  ['takeoff', ['test/takeoff/{bought,trim}.test.ts', 'test/takeoff/*.test.ts']],
  ['verify', ['test/verify/{reader,rules,geometry,breaches,sound,spoiled}.test.ts']],
  [
    'survey',
    [
      'test/survey/{lines,amounts,base-plane,house-index,labels,checks,direction}.test.ts',
      'test/survey/{least-first,twice-said,slips,overlaps,places,network,fixing}.test.ts',
      'test/survey/{doorways,closing,loose,placing,drawing,study-rooms,plans,said}.test.ts',
      'test/reference/{traverse,balancing,squareness}.test.ts',
    ],
  ],
  [
    'layout',
    [
      'test/layout/{area,area-edges,area-messages,balance,bound,breach-messages,breaches}.test.ts',
      'test/layout/{clash,direction,edge-said,frame,hand,how-large,jointing,line,narrowest}.test.ts',
      'test/layout/{overlap-finder,passage,problem,rips,set-out,start-wall,start-wall-choice}.test.ts',
      'test/layout/{starts,stock,stretches,view-from,zones,joint-stretch,laid}.test.ts',
      'test/layout/{lay,lay-choice,lay-kept,pieces,repair,random-lengths,plan}.test.ts',
    ],
  ],
])

export const FOLDERS: readonly string[] = [...SUITES.keys()]

export function suitesOf(folder: string): readonly string[] {
  return SUITES.get(folder) ?? []
}
