import { fileName } from '../../job/includes.ts'
import { keyOf } from '../../language/name.ts'
import type { Measured } from '../../report/compiled.ts'
import type { KnownJob } from './known-job.ts'
import type { Gathered } from './rename-places.ts'

/** What keeps all places from being known: a job, a file or a line that could not be read. */
export function inTheWay(
  { places, jobs }: Gathered,
  name: string,
  unread: readonly string[],
): string | null {
  const roots = new Set(jobs.map(({ job }) => job.addressOf(job.measured.root)))
  const isShared = places.some(({ address }) => !roots.has(address))
  if (isShared && unread.length > 0) {
    return `${unread.join(', ')} could not be read and may include a file that names ${name}. Nothing was changed.`
  }
  for (const { job } of jobs) {
    const why = unreadInclude(job.measured) ?? unreadLine(job.measured, name)
    if (why !== null) return why
  }
  return movedOn(jobs.map(({ job }) => job))
}

const UNREAD: readonly string[] = [
  'include-not-read',
  'include-refused',
  'include-circle',
  'include-too-deep',
  'include-is-a-job',
]

function unreadInclude({ messages, root }: Measured): string | null {
  const said = messages.find(({ code }) => UNREAD.includes(code))
  if (said === undefined) return null
  return `An include of ${fileName(said.span.file, root)} could not be read, and the name may stand there too. ${said.text} Nothing was changed.`
}

/** A line that cannot be read and holds the name may mean it or not. */
function unreadLine({ trees, root }: Measured, name: string): string | null {
  const key = ` ${keyOf(name)} `
  for (const { lines, text, file } of trees) {
    const line = lines.find(
      ({ broken, head, span }) =>
        broken && head !== null && wordsIn(text.slice(span.start, span.end)).includes(key),
    )
    if (line !== undefined) {
      return `Line ${line.number} of ${fileName(file, root)} cannot be read and may name ${name}. Mend it first. Nothing was changed.`
    }
  }
  return null
}

function wordsIn(line: string): string {
  return ` ${keyOf(line.replace(/[",\u201c\u201d]/g, ' '))} `
}

/** Two jobs that read one file must have read the same text. */
function movedOn(jobs: readonly KnownJob[]): string | null {
  const texts = new Map<string, string>()
  for (const { measured, addressOf } of jobs) {
    for (const { file, text } of measured.trees) {
      const before = texts.get(addressOf(file))
      if (before !== undefined && before !== text) {
        return `${fileName(file, measured.root)} was changed a moment ago and is being read. Ask again.`
      }
      texts.set(addressOf(file), text)
    }
  }
  return null
}
