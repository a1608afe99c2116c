import { readdirSync, readFileSync } from 'node:fs'

const SOURCE = new URL('../../server/src/', import.meta.url)

/** Where a message's code stands in the source: after its weight, or first in a function that says one. */
const CODES = [
  /message\(\s*'(?:error|warning|incomplete|note)',\s*'([a-z-]+)'/g,
  /(?:sayError|warn)\(\s*[\w.]+,\s*'([a-z-]+)'/g,
  /refusal\(\s*'([a-z-]+)'/g,
  /\bcode: '([a-z-]+)'/g,
  /^ +'(character-[a-z-]+)',$/gm,
]

/** Every message code that some folders of the source define, in order. */
export function codesIn(...folders: readonly string[]): readonly string[] {
  const texts = folders.flatMap((folder) => {
    const at = new URL(`${folder}/`, SOURCE)
    const names = readdirSync(at).filter((name) => name.endsWith('.ts'))
    return names.map((name) => readFileSync(new URL(name, at), 'utf8'))
  })
  const found = texts.flatMap((text) =>
    CODES.flatMap((code) => [...text.matchAll(code)].map((match) => match[1]!)),
  )
  return [...new Set(found)].sort()
}

/** The codes that reading one file can give. */
export const LANGUAGE_CODES: readonly string[] = codesIn('language', 'units')
