import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'

/** The example of an upper floor with all that stands beside it. */
export function readExamples(): {
  readonly files: ReadonlyMap<string, string>
  readonly root: string
} {
  const folder = new URL('../../examples/', import.meta.url).pathname
  const paths = globSync(`${folder}*.floor`).sort()
  const files = new Map(paths.map((path) => [basename(path), readFileSync(path, 'utf8')]))
  return { files, root: 'upper-floor.floor' }
}
