import { InvalidArgumentError, Option } from 'commander'
import { STANDARD_INPUT } from './text-file.ts'

/** How the answer is written. */
export type Format = 'text' | 'json'

export function formatOption(): Option {
  return new Option('--format <format>', 'how the answer is written')
    .choices(['text', 'json'])
    .default('text')
}

export function drawingOption(): Option {
  return new Option(
    '--drawing <file.svg>',
    'also draw the plan, all floors on one sheet',
  ).argParser(svgName)
}

/** A drawing's name ends in .svg, so that a job named in its place is never written over. */
function svgName(value: string): string {
  if (value.toLowerCase().endsWith('.svg')) return value
  throw new InvalidArgumentError('A drawing is written as SVG, to a file whose name ends in .svg.')
}

/** Why these files cannot be read together, or null. */
export function filesMisuse(files: readonly string[], name: string | undefined): string | null {
  const inputs = files.filter((file) => file === STANDARD_INPUT).length
  if (inputs > 1) return 'Standard input (-) can be read only once.'
  if (name !== undefined && inputs === 0)
    return '--name tells what standard input is called; it needs - among the files.'
  return null
}

/** Why one answer cannot hold all these files, or null. */
export function oneFileMisuse(
  files: readonly string[],
  { format, drawing }: { readonly format?: Format; readonly drawing?: string },
): string | null {
  if (files.length === 1) return null
  if (format === 'json') return '--format json takes one file, so that its answer is one document.'
  if (drawing !== undefined) return '--drawing takes one file: a drawing shows one job.'
  return null
}
