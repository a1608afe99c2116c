import { colouredWords } from './coloured-words.ts'
import { completion } from './completion.ts'
import { drawing } from './drawing.ts'
import type { Feature } from './feature.ts'
import { folding } from './folding.ts'
import { formatting } from './formatting.ts'
import { hints } from './hints.ts'
import { lenses } from './lenses.ts'
import { links } from './links.ts'
import { preview } from './preview.ts'
import { readings } from './readings.ts'
import { selection } from './selection.ts'
import { symbols } from './symbols.ts'

/** All that an editor may ask for. */
export const FEATURES: readonly Feature[] = [
  colouredWords,
  completion,
  drawing,
  folding,
  formatting,
  hints,
  lenses,
  links,
  preview,
  readings,
  selection,
  symbols,
]
