import { colouredWords } from './coloured-words.ts'
import { completion } from './completion.ts'
import { definition } from './definition.ts'
import { drawing } from './drawing.ts'
import type { Feature } from './feature.ts'
import { folding } from './folding.ts'
import { formatting } from './formatting.ts'
import { hints } from './hints.ts'
import { hover } from './hover.ts'
import { lenses } from './lenses.ts'
import { lineHelp } from './line-help.ts'
import { links } from './links.ts'
import { preview } from './preview.ts'
import { readings } from './readings.ts'
import { references } from './references.ts'
import { rename } from './rename.ts'
import { repairs } from './repairs.ts'
import { selection } from './selection.ts'
import { symbols } from './symbols.ts'
import { workspaceSymbols } from './workspace-symbols.ts'

/** All that an editor may ask for. */
export const FEATURES: readonly Feature[] = [
  colouredWords,
  completion,
  drawing,
  folding,
  formatting,
  hints,
  hover,
  lenses,
  definition,
  lineHelp,
  references,
  links,
  preview,
  readings,
  rename,
  repairs,
  workspaceSymbols,
  selection,
  symbols,
]
