/**
 * Addresses of files. Two ways of writing one address are told to be the same by writing both anew:
 * editors differ in what they escape (`c%3A` and `c:`), and a text knows nothing of either.
 */
export function canonical(uri: string): string {
  const [, start = '', path = '', rest = ''] =
    /^([^:/?#]+:(?:\/\/[^/?#]*)?)?([^?#]*)(.*)$/s.exec(uri) ?? []
  return start.toLowerCase() + withSmallDrive(path.split('/').map(rewritten).join('/')) + rest
}

/** The address of the folder that a file lies in, up to and with its last '/'; a file may have none. */
export function folderOf(uri: string): string {
  return uri.slice(0, Math.max(uri.lastIndexOf('/'), uri.indexOf(':')) + 1)
}

/** What a file is called in its folder, for people and for texts. */
export function nameOf(uri: string): string {
  const [last = ''] = uri.slice(folderOf(uri).length).split(/[?#]/, 1)
  return decoded(last)
}

/** The address of a file below a folder; the path is '/'-separated. */
export function below(folder: string, path: string): string {
  return folder + path.split('/').map(encoded).join('/')
}

/** The path of a file below a folder, or null where it does not lie there. */
export function pathBelow(folder: string, uri: string): string | null {
  return uri.startsWith(folder) ? uri.slice(folder.length).split('/').map(decoded).join('/') : null
}

function rewritten(step: string): string {
  return encoded(decoded(step))
}

function decoded(step: string): string {
  try {
    return decodeURIComponent(step)
  } catch {
    return step
  }
}

/** All but letters, digits and `-._~`, as editors write addresses; a lone half of a pair has no code. */
function encoded(step: string): string {
  return encodeURIComponent(step.toWellFormed()).replace(
    /[!'()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  )
}

function withSmallDrive(path: string): string {
  return path.replace(/^\/[A-Z]%3A/, (drive) => drive.toLowerCase().replace('%3a', '%3A'))
}
