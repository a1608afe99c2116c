import { compiling, type Measured } from '../../server/src/compile.ts'
import type { Span } from '../../server/src/facts/span.ts'
import type { View } from '../../server/src/features/view.ts'

/** The file that a lone text is. */
export const ROOT = 'job.floor'

/** A text freed of its marks, and where they stood: offsets into `text`, in written order. */
export interface Marked {
  readonly text: string
  readonly cursors: readonly number[]
  /** By where they begin; one may hold another. */
  readonly ranges: readonly { readonly start: number; readonly end: number }[]
}

/** Takes the marks out of a source: `‹|›` is a cursor, `‹` and `›` enclose a range. */
export function readMarks(source: string): Marked {
  let text = ''
  const cursors: number[] = []
  const ranges: { start: number; end: number }[] = []
  const open: { start: number; end: number }[] = []
  for (const part of source.split(/(‹\|›|‹|›)/)) {
    if (part === '‹|›') cursors.push(text.length)
    else if (part === '‹') {
      const range = { start: text.length, end: -1 }
      ranges.push(range)
      open.push(range)
    } else if (part === '›') {
      const range = open.pop()
      if (range === undefined) throw new Error('a range mark closes none')
      range.end = text.length
    } else text += part
  }
  if (open.length > 0) throw new Error('a range mark is not closed')
  return { text, cursors, ranges }
}

/** What a test looks at: a view of the marked file, and where the marks stood in it. */
export interface MarkedView {
  readonly view: View
  /** The first cursor; -1 where there is none. */
  readonly cursor: number
  readonly cursors: readonly number[]
  /** Of the looked-at file. */
  readonly ranges: readonly Span[]
  /** Of every file, by file and then by place. */
  readonly allRanges: readonly Span[]
  /** All texts without marks. */
  readonly texts: ReadonlyMap<string, string>
}

export interface Look {
  /** The file that is looked at: else the one that holds the cursor, a range, or the root. */
  readonly file?: string
  /** The file that the job begins with; else the first. */
  readonly root?: string
  /** Whether floors and counts are there yet. */
  readonly counted?: boolean
}

/** Reads a job of one marked text, or of several by file name, as far as an editor would have it. */
export function view(
  sources: string | Readonly<Record<string, string>>,
  { file, root, counted = true }: Look = {},
): MarkedView {
  const files = typeof sources === 'string' ? { [ROOT]: sources } : sources
  const marked = new Map(Object.entries(files).map(([name, source]) => [name, readMarks(source)]))
  const texts = new Map([...marked].map(([name, { text }]) => [name, text]))
  const first = root ?? [...marked.keys()][0]!
  const looked = file ?? fileWithMarks(marked) ?? first
  const job = stagesOf(texts, first, counted)
  const tree = job.measured.trees.find((one) => one.file === looked)
  if (tree === undefined) throw new Error(`the job does not reach ${looked}`)
  const { cursors } = marked.get(looked)!
  const allRanges = [...marked].flatMap(([name, { ranges }]) =>
    ranges.map((range) => ({ file: name, ...range })),
  )
  return {
    view: { file: looked, tree, measured: job.measured, counted: job.counted },
    cursor: cursors[0] ?? -1,
    cursors,
    ranges: allRanges.filter((range) => range.file === looked),
    allRanges,
    texts,
  }
}

function fileWithMarks(marked: ReadonlyMap<string, Marked>): string | undefined {
  const files = [...marked]
  const withCursor = files.find(([, { cursors }]) => cursors.length > 0)
  return (withCursor ?? files.find(([, { ranges }]) => ranges.length > 0))?.[0]
}

/** Both answers of one run, or the first alone; an include that there is not is absent. */
function stagesOf(
  texts: ReadonlyMap<string, string>,
  root: string,
  counted: boolean,
): Pick<View, 'measured' | 'counted'> {
  const absent = new Map<string, string>()
  for (;;) {
    const steps = compiling(texts, root, absent)
    let measured: Measured | null = null
    let step = steps.next()
    while (!step.done) {
      if (step.value.kind === 'measured') measured = step.value.measured
      if (measured !== null && !counted) return { measured, counted: null }
      step = steps.next()
    }
    if (!('missing' in step.value)) return { measured: measured!, counted: step.value }
    for (const path of step.value.missing) absent.set(path, `There is no ${path} here.`)
  }
}
