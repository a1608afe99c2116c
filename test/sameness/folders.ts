import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { JobText } from './inside/order.ts'

/** Where the jobs of a process lie, and where it is started. */
export interface Folder {
  readonly startedIn: string
  /** As the process is told it. */
  readonly jobs: string
}

export const FOLDERS = [
  'plain',
  'blanks',
  'deep',
  'accents',
  'marks',
  'linked',
  'from afar',
] as const
export type FolderKind = (typeof FOLDERS)[number]

const PATHS: { readonly [K in FolderKind]: string } = {
  plain: 'jobs',
  blanks: '  the  jobs of may.  ',
  deep: Array.from({ length: 60 }, (_, depth) => `deeper ${depth}`).join('/'),
  accents: 'Küche/ıİ ſ ß/台所 🏠/e\u0301/مطبخ/\u202Eright to left',
  marks: `o'clock/12" & $HOME/%20#1?;(x)`,
  linked: 'a link',
  'from afar': 'far/away',
}

/** Lays every job's files down in a folder of the job's name; they are made in the order of `jobs`. */
export function layJobs(base: string, kind: FolderKind, jobs: readonly JobText[]): Folder {
  const folder = join(base, PATHS[kind])
  mkdirSync(folder, { recursive: true })
  if (kind === 'linked') {
    symlinkSync(layJobs(join(base, 'behind'), 'plain', jobs).startedIn, join(folder, 'to'))
    return { startedIn: join(folder, 'to'), jobs: '.' }
  }
  for (const { name, files } of jobs)
    for (const [path, text] of files) lay(join(folder, name, path), text)
  return kind === 'from afar' ? { startedIn: '/', jobs: folder } : { startedIn: folder, jobs: '.' }
}

function lay(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, text)
}
