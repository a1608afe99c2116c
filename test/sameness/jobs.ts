import { readdirSync, readFileSync } from 'node:fs'
import { EXAMPLE_JOBS, EXAMPLE_TEXTS } from '../examples/read-example.ts'
import { randomJob } from '../generate/job.ts'
import type { JobText } from './inside/order.ts'

const GALLERY = new URL('../errors/', import.meta.url)

/** The examples, then jobs by chance: of every two one as houses are, and one as nasty as can be read. */
export function sameJobs(count: number): readonly JobText[] {
  const examples = EXAMPLE_JOBS.map(
    (root): JobText => ({ name: root, root, files: [...EXAMPLE_TEXTS] }),
  )
  const others = Array.from({ length: count - examples.length }, (_, index) => byChance(index))
  return [...examples, ...others]
}

/** The job's files in letters: short jobs are quick ones. */
export function sizeOf({ files }: JobText): number {
  return files.reduce((sum, [, text]) => sum + text.length, 0)
}

function byChance(index: number): JobText {
  const mode = index % 2 === 0 ? 'realistic' : 'nasty'
  const { root, files } = randomJob(index, mode)
  return { name: `${mode} ${index}`, root, files: [...files] }
}

/** The small files that provoke each message; a line `=== kitchen.floor` starts another file. */
export function messageJobs(): readonly JobText[] {
  const names = readdirSync(GALLERY).filter((name) => name.endsWith('.floor'))
  return names.sort().map((name) => {
    const [root = '', ...others] = readFileSync(new URL(name, GALLERY), 'utf8').split(/^=== /m)
    return { name, root: 'job.floor', files: [['job.floor', root], ...others.map(fileFrom)] }
  })
}

/** A file's name on the first line of a part, and its text below. */
function fileFrom(part: string): readonly [name: string, text: string] {
  const end = part.indexOf('\n')
  return [part.slice(0, end), part.slice(end + 1)]
}
