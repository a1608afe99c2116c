const DEVICE_NAMES = new Set(['con', 'prn', 'aux', 'nul', 'conin$', 'conout$', 'clock$'])
const NUMBERED_DEVICE = /^(?:com|lpt)[0-9¹²³]$/
const WHAT_IS_READ = 'An include names a file below the job, such as prices/spring.floor.'

export type IncludePath =
  | { readonly kind: 'path'; readonly path: string }
  | { readonly kind: 'refused'; readonly why: string }

/**
 * Where the path on an include line leads, seen from the file that holds the line; or, in whole
 * sentences, why it is refused. The rules are the same on every system, so that a job that reads on
 * one reads on all, and nothing is ever looked up outside the root's folder.
 */
export function resolveInclude(typed: string, from: string, root: string): IncludePath {
  const why = refusal(typed)
  if (why !== null) return { kind: 'refused', why: `${why} ${WHAT_IS_READ}` }
  const folder = folderOf(root)
  const steps = folderOf(from).slice(folder.length).split('/').concat(typed.split('/'))
  const below = walk(steps)
  if (below === null) {
    const out = `"${typed}" leads out of the job's folder by "..".`
    return { kind: 'refused', why: `${out} ${WHAT_IS_READ}` }
  }
  return { kind: 'path', path: folder + below.join('/') }
}

/** Up to and with the last '/', or '' for a bare file name. */
export function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf('/') + 1)
}

/** The steps below the root's folder with '.' and '..' taken, or null once they leave it. */
function walk(steps: readonly string[]): string[] | null {
  const below: string[] = []
  for (const step of steps) {
    if (step === '..') {
      if (below.pop() === undefined) return null
    } else if (step !== '' && step !== '.') {
      below.push(step)
    }
  }
  return below
}

function refusal(typed: string): string | null {
  if (hasControlCharacter(typed)) return 'This path holds a control character.'
  if (typed.includes('\\'))
    return `"${typed}" is written with \\; folders are parted by / here, on every system.`
  if (/^[a-z]:/i.test(typed) || typed.startsWith('/')) return `"${typed}" is a full path.`
  if (typed.includes(':')) return `"${typed}" is an address.`
  const device = typed.split('/').find(isDeviceName)
  if (device !== undefined)
    return `"${typed}" holds the name ${device}, which some systems keep for a device.`
  if (!typed.toLowerCase().endsWith('.floor')) return `"${typed}" does not end in .floor.`
  return null
}

function hasControlCharacter(path: string): boolean {
  for (let i = 0; i < path.length; i++) {
    const code = path.charCodeAt(i)
    if (code < 0x20 || (code >= 0x7f && code < 0xa0)) return true
  }
  return false
}

/** One of these systems opens the device for `nul`, `NUL.floor` and `nul .txt` alike. */
function isDeviceName(step: string): boolean {
  const stem = (step.split('.', 1)[0] ?? '').trimEnd().toLowerCase()
  return DEVICE_NAMES.has(stem) || NUMBERED_DEVICE.test(stem)
}
