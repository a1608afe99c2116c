import { type Message, message } from '../facts/message.ts'
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
  const lines = linesOf(block, name, binding)
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

function linesOf(block: Block, name: Name, binding: Binding): ProductLines {
  const found = Map.groupBy(
    block.under.filter((line) => WORDS.includes(line.word) && !line.broken),
    ({ word }) => word,
  )
  const twice = [...found.values()].flatMap(([, second]) => second ?? [])
  if (twice.length > 1) {
    binding.say(linesTwice(name, twice))
    return new Map([...found].map(([word, [first]]) => [word, first!]))
  }
  return new Map([...found].flatMap(([word, lines]) => [[word, onlyOne(lines, binding)!]]))
}

/** Several lines twice are two products, of which the second lost the line that opens it. */
function linesTwice(name: Name, twice: readonly Entry[]): Message {
  const words = allOf(twice.map(({ word }) => word))
  const text =
    `${said(name.text)} has each of these lines twice: ${words}. Are they another product's? A line ` +
    '"product" with its name begins one; else keep one of each.'
  const [first, ...others] = twice
  const related = others.map(({ word, line }) => ({
    span: line.span,
    text: `The second ${word} line.`,
  }))
  return message('error', 'line-twice', first!.line.span, text, { related })
}

function padOf(line: Entry | undefined): Product['pad'] {
  const pad = line === undefined ? null : choiceOf(line, 'attached|separate|none')
  return pad as Product['pad']
}
