import { boxAround } from './exact.ts'
import type { Found } from './found.ts'
import type { Floor, Piece } from './layout.ts'
import type { Finding } from './report.ts'
import { listed, mm } from './say.ts'

/**
 * No plank yields more than itself: each is one that the product comes in, each piece's span lies
 * inside its plank, and a span is no smaller than the piece that is cut from it. With `apart.ts` this
 * makes every piece a part of its plank of its own.
 */
export function checkSpans(floor: Floor, found: Found): readonly Finding[] {
  return [...planks(floor), ...floor.pieces.flatMap((piece) => span(piece, floor, found))]
}

function planks({ planks, pieces, rules }: Floor): Finding[] {
  const lengths = new Set(rules.plankLengths.map(({ length }) => length))
  const used = new Set(pieces.map(({ plank }) => plank))
  const strange = planks.filter(({ length }) => !lengths.has(length))
  const unused = planks.filter(({ plank }) => !used.has(plank)).map(({ plank }) => plank)
  const faults: Finding[] = strange.map(({ plank, length }) => ({
    code: 'plank-not-of-product',
    text: `Plank ${plank} is ${mm(length)} long, which the product does not come in.`,
  }))
  if (unused.length > 0) {
    faults.push({ code: 'plank-unused', text: `Nothing is cut from ${listed('plank', unused)}.` })
  }
  return faults
}

function span(item: Piece, { rules }: Floor, { lengths }: Found): Finding[] {
  const { piece, course, along, across, ring } = item
  const faults: Finding[] = []
  const say = (code: string, text: string) => faults.push({ code, text, course, piece })
  const length = lengths.get(item.plank)!
  if (!lies(along, length) || !lies(across, rules.plankWidth)) {
    say(
      'plank-overdrawn',
      `Piece ${piece} takes ${mm(along[0])} to ${mm(along[1])} along and ${mm(across[0])} to ${mm(across[1])} across a plank of ${mm(length)} by ${mm(rules.plankWidth)}.`,
    )
  }
  const box = boxAround(ring)
  const [long, wide] = [box.east - box.west, box.high - box.low]
  if (along[1] - along[0] < long || across[1] - across[0] < wide) {
    say(
      'span-too-small',
      `Piece ${piece} is ${mm(long)} by ${mm(wide)} and is cut from ${mm(along[1] - along[0])} by ${mm(across[1] - across[0])}.`,
    )
  }
  return faults
}

function lies([from, to]: readonly [number, number], whole: number): boolean {
  return from >= 0 && from < to && to <= whole
}
