import type { FileRead } from './host.ts'

type Failed = Exclude<FileRead, { kind: 'read' }>

const WHILE_READING: ReadonlyMap<string, Failed> = new Map([
  ['ENOENT', { kind: 'missing' }],
  ['ENOTDIR', { kind: 'missing' }],
  ['EACCES', { kind: 'forbidden' }],
  ['EPERM', { kind: 'forbidden' }],
  ['EISDIR', { kind: 'folder' }],
  ['ELOOP', { kind: 'circular link' }],
  // A socket answers so to being opened.
  ['ENXIO', { kind: 'socket' }],
])

/** The end of a sentence for each thing that the system says no with. */
const REASONS: ReadonlyMap<string, string> = new Map([
  ['ENOENT', 'its folder does not exist'],
  ['ENOTDIR', 'its folder is a file'],
  ['EACCES', 'you have no permission for it'],
  ['EPERM', 'you have no permission for it'],
  ['EROFS', 'the disk is read-only'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'your share of the disk is full'],
  ['EFBIG', 'the disk takes no file of this size'],
  ['EIO', 'the disk reported a fault'],
  ['ENAMETOOLONG', 'its name is too long'],
  ['ELOOP', 'it is a link that leads back to itself'],
  ['EMFILE', 'too many files are open'],
  ['ENFILE', 'too many files are open'],
  ['EBUSY', 'another program is using it'],
  ['ETXTBSY', 'another program is using it'],
])

/** What a fault of Node's means for a file that was to be read. */
export function whyNotRead(error: unknown): Failed {
  return WHILE_READING.get(codeOf(error)) ?? { kind: 'failed', reason: reasonFor(error) }
}

/** What a fault of Node's means, as the end of a sentence. */
export function reasonFor(error: unknown): string {
  const code = codeOf(error)
  return REASONS.get(code) ?? `the system said ${code === '' ? 'no' : code}`
}

export function codeOf(error: unknown): string {
  const { code } = Object(error)
  return typeof code === 'string' ? code : ''
}
