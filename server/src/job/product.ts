import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { boxOf } from './box.ts'
import { onlyOne } from './file-lines.ts'
import type { Product } from './job.ts'
import { choiceOf } from './phrases.ts'
import { faceOf, plankThickness } from './plank.ts'
import { linesWanted, sayAssumed, sayWanted } from './product-messages.ts'
import {
  type ProductLines,
  rulesAssumed,
  rulesOf,
  rulesSaid,
  rulesWanted,
} from './product-rules.ts'
import { countOf } from './settings.ts'
import { spoilAssumed, spoilOf } from './spoil.ts'

const WORDS = ['plank', 'box', 'pad', 'joints', 'gap', 'run', 'laid', 'cut', 'spoil', 'spares']

/**
 * The product of a block; null, with messages, while a fact that only it can give is missing. That
 * holds up the totals only where the product is used.
 */
export function productOf(
  block: Block,
  name: Name,
  isUsed: boolean,
  binding: Binding,
): Product | null {
  const lines = linesOf(block, binding)
  const [plank, box] = [lines.get('plank'), lines.get('box')]
  const face = plank === undefined ? null : faceOf(plank, binding)
  const held = face === null || box === undefined ? null : boxOf(box, face, binding)
  const says = rulesSaid(lines, binding)
  const rules = rulesOf(says)
  const spoil = spoilOf(lines.get('spoil'), binding)
  sayWanted({ block, name, isUsed }, [...linesWanted(lines), ...rulesWanted(says)], binding)
  if (plank === undefined || face === null || held === null || rules === null) return null
  const assumed = [...rulesAssumed(says, binding), ...spoilAssumed(spoil)]
  sayAssumed({ block, name, isUsed }, assumed, binding)
  const spares = lines.get('spares')
  return {
    name,
    width: face.width,
    ...held,
    thickness: plankThickness(plank, binding),
    pad: padOf(lines.get('pad')),
    rules,
    spoil,
    spares: {
      planks: (spares && countOf(spares, 'COUNT planks', binding)) ?? 0,
      boxes: (spares && countOf(spares, 'COUNT boxes|box', binding)) ?? 0,
    },
    span: block.line.span,
  }
}

function linesOf(block: Block, binding: Binding): ProductLines {
  const lines = new Map<string, Entry>()
  for (const word of WORDS) {
    const found = block.under.filter((entry) => entry.word === word && !entry.broken)
    const line = onlyOne(found, binding)
    if (line !== null) lines.set(word, line)
  }
  return lines
}

function padOf(line: Entry | undefined): Product['pad'] {
  const pad = line === undefined ? null : choiceOf(line, 'attached|separate|none')
  return pad as Product['pad']
}
