/** A job as its files by path, and which of them holds the job line. */
export interface Texts {
  readonly files: ReadonlyMap<string, string>
  readonly root: string
}

/** A changed job, and what turns its output's names back into those of the job it was made from. */
export interface Changed extends Texts {
  readonly back?: (output: string) => string
}

/** A job of one file. */
export function oneFile(text: string, root = 'random.floor'): Texts {
  return { files: new Map([[root, text]]), root }
}

export function rootText({ files, root }: Texts): string {
  return files.get(root)!
}

/** The job with its root's text changed; null where there was nothing to change. */
export function inRoot(texts: Texts, change: (text: string) => string | null): Changed | null {
  const text = change(rootText(texts))
  if (text === null || text === rootText(texts)) return null
  return { ...texts, files: new Map([...texts.files, [texts.root, text]]) }
}

/** The job with the text of every file changed; null where nothing was changed in any. */
export function inEvery(texts: Texts, change: (text: string) => string | null): Changed | null {
  const files = new Map([...texts.files].map(([path, text]) => [path, change(text) ?? text]))
  const isSame = [...files].every(([path, text]) => text === texts.files.get(path))
  return isSame ? null : { ...texts, files }
}

/** The job with the text of every file changed; null where one of them cannot be. */
export function inAllOrNone(texts: Texts, change: (text: string) => string | null): Changed | null {
  const files = [...texts.files].map(([path, text]) => [path, change(text)] as const)
  const changed = files.flatMap(([path, text]) => (text === null ? [] : [[path, text] as const]))
  return changed.length < files.length ? null : { ...texts, files: new Map(changed) }
}
