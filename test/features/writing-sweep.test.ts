import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { complete } from '../../server/src/features/completion.ts'
import { definition } from '../../server/src/features/definition.ts'
import { formatRange, formatTyped } from '../../server/src/features/format-lines.ts'
import { highlights } from '../../server/src/features/highlights.ts'
import { lineHelp } from '../../server/src/features/line-help.ts'
import { pasteReadings } from '../../server/src/features/paste-readings.ts'
import { references } from '../../server/src/features/references.ts'
import { nameToChange, rename } from '../../server/src/features/rename.ts'
import { repairs } from '../../server/src/features/repairs.ts'
import { effort } from '../effort.ts'
import { applied } from './applied.ts'
import { ROOT, view } from './marked.ts'

const GALLERY = new URL('../errors/', import.meta.url)
const FILES = readdirSync(GALLERY)
  .filter((name) => name.endsWith('.floor'))
  .map((name) => [name, readFileSync(new URL(name, GALLERY), 'utf8')] as const)
const EVERY = effort(7, 1)

describe('damaged texts are answered at every place, and past their ends', () => {
  test.each(FILES.filter((_, i) => i % effort(4, 1) === 0))('%s', (_, text) => {
    const { view: seen, texts } = view({ [ROOT]: text }, { counted: false })
    const job = { measured: seen.measured, addressOf: (file: string) => file }
    for (let offset = -1; offset <= text.length + 1; offset += EVERY) {
      const spans = [
        ...complete(seen, offset).items.map(({ span }) => span),
        ...references(seen, offset, true),
        ...highlights(seen, offset).map(({ span }) => span),
        ...(definition(seen, offset)?.places ?? []),
      ]
      for (const { start, end } of spans) {
        expect(start >= 0 && start <= end && end <= text.length).toBe(true)
      }
      const help = lineHelp(seen, offset)
      expect(help === null || help.active === null || help.active < help.forms.length).toBe(true)
      for (const edits of [
        formatTyped(seen.tree, offset),
        formatRange(seen.tree, offset, offset + 9),
        ...repairs(seen, { start: offset, end: offset }).map((one) => one.edits),
      ]) {
        expect(applied(texts, edits).size).toBe(1)
      }
      const pasted = pasteReadings(seen, offset, "12'\n9'")
      expect(pasted.kind === 'filled' ? pasted.edits.length : 2).toBe(2)
      const asked = { view: seen, offset, job, others: [], unread: [] }
      if (nameToChange(seen, offset).kind === 'refused') {
        expect(rename(asked, 'another').kind).toBe('refused')
      }
    }
  })
})
