import { type Message, message } from '../facts/message.ts'
import { nearest } from '../facts/near.ts'
import { once } from '../facts/once.ts'
import type { Span } from '../facts/span.ts'
import type { Block, Entry, Tree } from '../language/tree.ts'
import { folderOf, resolveInclude } from './include-path.ts'

/** One include line: the file that it names, and where it says so. */
export interface Include {
  /** From the same place as the tree's own `file`, '/'-separated. */
  readonly path: string
  readonly span: Span
}

/** The files that one root needs, as far as their texts are there. */
export interface Reach {
  /** The root first, then what it includes, each once, in the order of the lines. */
  readonly trees: readonly Tree[]
  /** Include lines whose text is not among the trees. */
  readonly missing: readonly Include[]
  readonly messages: readonly Message[]
}

/** A chain of includes longer than this is refused: no shop nests its lists so deep. */
const DEEPEST = 100

/** A file with a `job` line is a job; others are parts that jobs include. */
export function isRoot(tree: Tree): boolean {
  return tree.blocks.some((block) => block.word === 'job')
}

/** The include lines of one file that may be looked up, and a message for each that may not. */
export function includesOf(
  tree: Tree,
  root: string,
): { readonly includes: readonly Include[]; readonly messages: readonly Message[] } {
  const includes: Include[] = []
  const messages: Message[] = []
  for (const line of includeLines(tree)) {
    const found = resolveInclude(line.text, tree.file, root)
    if (found.kind === 'path') includes.push({ path: found.path, span: line.textSpan })
    else messages.push(message('error', 'include-refused', line.textSpan, found.why))
  }
  return { includes, messages }
}

/** Follows the include lines from the root through the trees at hand. */
export function reach(trees: readonly Tree[], root: string): Reach {
  const byFile = new Map(trees.map((tree) => [tree.file, tree]))
  const read = new Map<string, Tree>()
  const missing: Include[] = []
  const messages: Message[] = []

  const follow = (tree: Tree, chain: readonly Step[]): void => {
    read.set(tree.file, tree)
    const found = includesOf(tree, root)
    messages.push(...found.messages)
    for (const include of found.includes) {
      const steps = [...chain, { from: tree.file, include }]
      const next = byFile.get(include.path)
      if (steps.some((step) => step.from === include.path)) messages.push(circle(steps, root))
      else if (read.has(include.path)) continue
      else if (next === undefined) missing.push(include)
      else if (steps.length > DEEPEST) messages.push(tooDeep(include))
      else if (isRoot(next)) messages.push(isAJob(include, root))
      else follow(next, steps)
    }
  }

  const first = byFile.get(root)
  if (first !== undefined) follow(first, [])
  return { trees: [...read.values()], missing, messages }
}

interface Step {
  readonly from: string
  readonly include: Include
}

function includeLines(tree: Tree): readonly Entry[] {
  return tree.blocks.filter((block) => block.word === 'include' && !block.broken)
}

/** Whether a file is included that was not read: refused, not there, or on a line that cannot be read. */
export function hasUnreadInclude(
  tree: Tree,
  root: string,
  read: { readonly has: (file: string) => boolean },
): boolean {
  const { includes, messages } = includesOf(tree, root)
  return (
    messages.length > 0 ||
    includes.some(({ path }) => !read.has(path)) ||
    tree.blocks.some(mayHoldInclude)
  )
}

const mayHoldInclude = once((block: Block) => mayBeInclude(block) || block.under.some(mayBeInclude))

/** A line that cannot be read and begins like an include, or holds the name of such a file. */
function mayBeInclude({ word, text, broken }: Entry): boolean {
  return broken && (nearest(word, ['include']) !== null || `${word} ${text}`.includes('.floor'))
}

/** How a file is called in a message: by its path from the root's folder. */
export function fileName(file: string, root: string): string {
  return file.startsWith(folderOf(root)) ? file.slice(folderOf(root).length) : file
}

function circle(steps: readonly Step[], root: string): Message {
  const last = steps[steps.length - 1]!
  const round = steps.slice(steps.findIndex((step) => step.from === last.include.path))
  const names = round.map((step) => fileName(step.include.path, root))
  const text =
    `These files include each other in a circle: ${fileName(last.include.path, root)} includes ` +
    `${names.join(', which includes ')}. Leave one of these include lines out.`
  const related = round.slice(0, -1).map((step) => ({
    span: step.include.span,
    text: `${fileName(step.from, root)} includes ${fileName(step.include.path, root)}.`,
  }))
  return message('error', 'include-circle', last.include.span, text, { related })
}

function tooDeep(include: Include): Message {
  const text = `This include is number ${DEEPEST + 1} of a chain; at most ${DEEPEST} files may include one another in a row.`
  return message('error', 'include-too-deep', include.span, text)
}

function isAJob(include: Include, root: string): Message {
  const text =
    `${fileName(include.path, root)} is a job of its own (it has a job line), so it is not read here. ` +
    'Move what both need into a file without a job line and include that.'
  return message('error', 'include-is-a-job', include.span, text)
}

/** The message for an include whose text could not be had; `why` is the sentence of whoever tried. */
export function notRead(include: Include, root: string, why: string | undefined): Message {
  const name = fileName(include.path, root)
  const reason = why ?? `There is no file "${name}" below the job's folder.`
  const text = `${reason} Until it is read, what this job takes from it is missing.`
  return message('error', 'include-not-read', include.span, text)
}
