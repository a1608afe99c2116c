import type { Block } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { blocksNamed, textOf, treeOf, wholeOf } from './edit.ts'
import { type Changed, inRoot, rootText, type Texts } from './texts.ts'

/** Where blocks are moved to. */
const PART = 'lists/parts of the job.floor'

/** Some blocks of the root moved into a file that it includes; null where none can be. */
export function withBlocksIncluded(
  job: Texts,
  words: readonly string[],
  dice: Dice,
): Changed | null {
  const tree = treeOf(rootText(job))
  const moved = tree.blocks.filter((block) => words.includes(block.word) && dice.chance(70))
  return moved.length === 0 ? null : movedTo(job, moved)
}

function movedTo(job: Texts, moved: readonly Block[]): Changed {
  const tree = treeOf(rootText(job))
  const head = blocksNamed(tree, 'units').map((block) => textOf(tree, block))
  const part = ['floorscribe 1\n', ...head, ...moved.map((block) => textOf(tree, block))].join('')
  const starts = new Set(moved.map(({ line }) => line.number))
  let rest = ''
  let at = 0
  for (const block of tree.blocks.filter(({ line }) => starts.has(line.number))) {
    const { start, end } = wholeOf(tree, block)
    rest += tree.text.slice(at, start)
    at = end
  }
  const root = withInclude(rest + tree.text.slice(at), PART)
  return { ...job, files: new Map([...job.files, [job.root, root], [PART, part]]) }
}

/** Before all other includes: what stood in the root comes before what those have. */
function withInclude(text: string, path: string): string {
  const [first] = blocksNamed(treeOf(text), 'include')
  const at = first?.line.span.start ?? text.length
  return `${text.slice(0, at)}include ${path}\n${text.slice(at)}`
}

/** The products in a list that two files include, and the root both of these. */
export function withDiamond(job: Texts, dice: Dice): Changed | null {
  const one = withBlocksIncluded(job, ['product'], { ...dice, chance: () => true })
  if (one === null) return null
  const name = PART.replace('lists/', '')
  const both = ['left', 'right'].map(
    (side) => [`lists/${side}.floor`, `floorscribe 1\ninclude ${name}\n`] as const,
  )
  const root = rootText(one).replace(
    `include ${PART}`,
    both.map(([each]) => `include ${each}`).join('\n'),
  )
  return { ...one, files: new Map([...one.files, [job.root, root], ...both]) }
}

/** What was moved into a file put back in the place of its include line. */
export function withPartInlined(job: Texts): Changed {
  const part = job.files.get(PART)!.replace(/^floorscribe.*\n(units .*\n)?/i, '')
  const root = rootText(job).replace(`include ${PART}\n`, () => part)
  const files = [...job.files].filter(([path]) => path !== PART)
  return { root: job.root, files: new Map([...files, [job.root, root]]) }
}

/** Files that the job does not reach: another job, a part that nobody includes, and one full of slips. */
export function withStrangers(job: Texts): Changed {
  const strangers: readonly (readonly [string, string])[] = [
    ['another.floor', `${rootText(job).replace(/^job .*/m, 'job Another')}\n`],
    ['attic.floor', 'floorscribe 1\nroom den\n  north 3\' 0"\n'],
    ['lists/slips.floor', 'product\n  plank 7" x\nroom\n <<<<<<<\n'],
  ]
  return { ...job, files: new Map([...strangers, ...job.files]) }
}

/** The files handed over in another order. */
export function withFilesReversed(job: Texts): Changed {
  return { ...job, files: new Map([...job.files].reverse()) }
}

/** The root in a folder of its own, its includes with it. */
export function withFolder(job: Texts): Changed {
  const moved = [...job.files].map(([path, text]) => [`jobs/2027/${path}`, text] as const)
  return { root: `jobs/2027/${job.root}`, files: new Map(moved) }
}

/** A line that includes a file twice, and one that has nothing in it. */
export function withNeedlessIncludes(job: Texts): Changed | null {
  const path = 'empty.floor'
  const changed = inRoot(job, (text) => withInclude(withInclude(text, path), path))
  return changed && { ...changed, files: new Map([...changed.files, [path, 'floorscribe 1\n']]) }
}
