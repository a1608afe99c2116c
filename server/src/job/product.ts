import { message } from '../facts/message.ts'
import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { boxOf } from './box.ts'
import { onlyOne } from './file-lines.ts'
import type { Product } from './job.ts'
import { choiceOf } from './phrases.ts'
import { faceOf, plankThickness } from './plank.ts'
import {
  type ProductLines,
  type RulesSaid,
  rulesAssumed,
  rulesOf,
  rulesSaid,
  rulesWanted,
} from './product-rules.ts'
import { allOf, said } from './sentence.ts'
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
  sayMissing(block, name, lines, binding)
  sayWanted(block, name, says, isUsed, binding)
  if (plank === undefined || face === null || held === null || rules === null) return null
  if (isUsed)
    sayAssumed(block, name, [...rulesAssumed(says, binding), ...spoilAssumed(spoil)], binding)
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

/** A broken line may be the one that is missing; that it is broken is said already. */
function isAwaited(block: Block): boolean {
  return block.broken || block.under.some((entry) => entry.broken)
}

function sayMissing(block: Block, name: Name, lines: ProductLines, binding: Binding): void {
  const missing = [
    ...(lines.has('plank') ? [] : ['its face (plank 7" x 48")']),
    ...(lines.has('box') ? [] : ['what a box holds (box 9 planks)']),
  ]
  if (missing.length === 0 || isAwaited(block)) return
  const text = `Nothing can be counted in ${said(name.text)} without ${allOf(missing)}. Add ${missing.length === 1 ? 'the line' : 'the lines'}.`
  binding.say(message('error', 'product-without-size', block.line.span, text))
}

/** What the maker alone can say is asked for, and never assumed. */
function sayWanted(
  block: Block,
  name: Name,
  says: RulesSaid,
  isUsed: boolean,
  binding: Binding,
): void {
  const wanted = rulesWanted(says)
  if (wanted.length === 0 || isAwaited(block)) return
  const words = [...new Set(wanted.map(({ word }) => word))]
  const lines = words.map((word) => {
    const writes = wanted.filter((one) => one.word === word).map(({ write }) => write)
    return `${word} ${writes.join(', ')}`
  })
  const text =
    `${name.text} does not say ${allOf(wanted.map(({ what }) => what))}. Its maker does, and nobody ` +
    `should guess it: write as in ${lines.join('; ')}.`
  const weight = isUsed ? 'incomplete' : 'note'
  binding.say(message(weight, 'product-unfinished', block.line.span, text))
}

function sayAssumed(block: Block, name: Name, assumed: readonly string[], binding: Binding): void {
  if (assumed.length === 0) return
  const text = `Not said for ${name.text}, so taken from common practice: ${assumed.join('; ')}.`
  binding.say(message('note', 'product-defaults', block.line.span, text))
}

function padOf(line: Entry | undefined): Product['pad'] {
  const pad = line === undefined ? null : choiceOf(line, 'attached|separate|none')
  return pad as Product['pad']
}
