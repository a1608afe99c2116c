import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Message } from '../../server/src/facts/message.ts'
import { repairs } from '../../server/src/features/repairs.ts'
import { effort } from '../effort.ts'
import { fences, provokes } from '../language/page.ts'
import { applied } from './applied.ts'
import { ROOT, view } from './marked.ts'

const GALLERY = new URL('../errors/', import.meta.url)

/** What the gallery alone gives reason for. */
const SETTLED = [
  'accept check-disagrees',
  'accept closet-returns-disagree',
  'accept closing-error',
  'accept corner-not-square',
  'accept door-widths-disagree',
  'accept doorway-joint',
  'accept doorway-misses-room',
  'accept indent-extra',
  'accept indent-lost',
  'accept jambs-disagree',
  'accept longest-run',
  'accept names-alike',
  'accept narrowest-rip',
  'accept obstacles-overlap',
  'accept parts-disagree',
  'accept readings-disagree',
  'accept rooms-overlap',
  'accept shift-along-planks',
  'accept shortest-end',
  'accept slant-disagrees',
  'accept stagger',
  'accept start-across-planks',
  'accept thickness-disagrees',
  'accept touched-not-said',
  'choice comma-astray',
  'choice feet-after-inches',
  'choice inch-mark-missing',
  'choice inches-past-twelve',
  'choice length-two-ways',
  'choice name-unknown',
  'choice opening-does-not-fit',
  'sure accept-unknown',
  'sure character-hidden',
  'sure character-not-text',
  'sure character-turns-text',
  'sure comma-in-number',
  'sure comma-missing',
  'sure comment-without-blank',
  'sure digits-not-plain',
  'sure foot-mark-twice',
  'sure fraction-too-large',
  'sure inch-mark-missing',
  'sure indent-extra',
  'sure indent-lost',
  'sure length-negative',
  'sure letter-in-number',
  'sure mark-unknown',
  'sure name-needs-quotes',
  'sure name-unknown',
  'sure opening-does-not-fit',
  'sure point-astray',
  'sure walls-right-to-left',
  'sure word-mistyped',
  'sure word-unknown',
  'to be measured closing-error',
]

/** Texts that each provoke a message: the gallery's and the reference page's. */
const texts: readonly (readonly [string, string])[] = [
  ...readdirSync(GALLERY)
    .filter((name) => name.endsWith('.floor'))
    .map((name) => [name, readFileSync(new URL(name, GALLERY), 'utf8')] as const),
  ...fences.slice(effort(fences.length, 0)).flatMap((fence) => {
    const code = provokes(fence)
    return code === null || fence.text.length > 100_000
      ? []
      : [[`page: ${code}`, fence.text] as const]
  }),
]

function countOf(messages: readonly Message[], code: string): number {
  return messages.filter((one) => one.code === code && !one.accepted).length
}

describe('what is offered for a message settles it and brings no other error', () => {
  const tried = new Set<string>()

  test.each(texts)('%s', (_, text) => {
    const { view: seen, texts: before } = view({ [ROOT]: text })
    const said = seen.counted!.messages
    for (const { code, span } of said) {
      for (const repair of repairs(seen, span)) {
        if (repair.message.code !== code) continue
        tried.add(`${repair.kind} ${code}`)
        const after = view(Object.fromEntries(applied(before, repair.edits))).view.counted!.messages
        expect(countOf(after, code), repair.title).toBeLessThan(countOf(said, code))
        // The list that reads then names rooms that these two texts do not have.
        if (code === 'comma-astray') continue
        for (const one of after.filter(({ weight }) => weight === 'error')) {
          expect(countOf(after, one.code), `${repair.title}: ${one.text}`).toBeLessThanOrEqual(
            countOf(said, one.code),
          )
        }
      }
    }
  })

  test('and so for every one of these', () => {
    expect([...tried]).toEqual(expect.arrayContaining(SETTLED))
  })
})
