import type { FileRead } from './host.ts'

/** Why a file was not read: one whole sentence each, and what would be accepted. */
export function refusal(name: string, read: Exclude<FileRead, { kind: 'read' }>): string {
  switch (read.kind) {
    case 'missing':
      return `There is no file "${name}".`
    case 'folder':
      return `"${name}" is a folder; a file is needed here.`
    case 'pipe':
      return `"${name}" is a pipe; a file is needed here.`
    case 'device':
      return `"${name}" is a device; a file is needed here.`
    case 'socket':
      return `"${name}" is a socket; a file is needed here.`
    case 'forbidden':
      return `"${name}" may not be read: you have no permission for it.`
    case 'too big':
      return `"${name}" is larger than ${read.limit / 1_000_000} MB and was not read.`
    case 'changing':
      return `"${name}" kept changing while it was read; run again when it is whole.`
    case 'outside':
      return `"${name}" is a link that leads out of the job's folder, so it was not read; put the file itself below that folder.`
    case 'circular link':
      return `"${name}" is a link that leads back to itself.`
    case 'failed':
      return `"${name}" could not be read: ${read.reason}.`
  }
}
