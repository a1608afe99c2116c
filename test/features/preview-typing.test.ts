import { expect, test } from 'vitest'
import { asToPage } from '../../client/webview/messages.ts'
import { type Preview, previewOf } from '../../server/src/features/preview.ts'
import { applyChange, previewChange } from '../../server/src/features/preview-change.ts'
import type { View } from '../../server/src/features/view.ts'
import { effort } from '../effort.ts'
import { type Dice, dice } from '../generate/dice.ts'
import { randomJob } from '../generate/job.ts'
import { view } from './marked.ts'

const EDITS: readonly ((lines: readonly string[], at: number) => readonly string[])[] = [
  (lines, at) => lines.toSpliced(at, 1),
  (lines, at) => lines.toSpliced(at, 0, lines[at] ?? ''),
  (lines, at) => lines.slice(0, at),
  (lines, at) => lines.with(at, (lines[at] ?? '').slice(0, -3)),
  (lines, at) =>
    lines.with(
      at,
      (lines[at] ?? '').replace(/\d+/, (digits) => `${digits}1`),
    ),
  (lines, at) => lines.with(at, (lines[at] ?? '').replace(/\d.*/, '?')),
]

function edited(text: string, roll: Dice): string {
  const lines = text.split('\n')
  return roll.pick(EDITS)(lines, roll.below(lines.length)).join('\n')
}

/** What must hold of every picture, and of the way to it from the one before. */
function hold(before: Preview | null, after: Preview, { measured }: View): void {
  const { picture, places } = after
  const lists = [picture.scene.shapes, picture.floors, picture.courses, picture.strip]
  for (const list of lists) expect(new Set(list.map(({ id }) => id)).size).toBe(list.length)
  const change = previewChange(before?.picture ?? null, picture)
  const sent: unknown = JSON.parse(JSON.stringify({ type: 'preview', change }))
  const heard = asToPage(sent)
  expect(heard?.type).toBe('preview')
  if (heard?.type === 'preview')
    expect(applyChange(before?.picture ?? null, heard.change)).toEqual(picture)
  const drawn = new Set(picture.scene.shapes.map(({ id }) => id))
  const lengths = new Map(measured.trees.map(({ file, text }) => [file, text.length]))
  for (const [id, { file, start, end }] of places) {
    expect(drawn.has(id)).toBe(true)
    if (picture.state !== 'old' && picture.state !== 'counting')
      expect(start >= 0 && start < end && end <= (lengths.get(file) ?? -1)).toBe(true)
  }
}

const PATIENCE = { timeout: 900_000 }

test(
  'whatever is typed in whatever job, pictures are sound and changes lead to them',
  PATIENCE,
  () => {
    const jobs = effort(4, 120)
    let drawn = 0
    for (let seed = 1; seed <= jobs; seed++) {
      const job = randomJob(seed, seed % 3 === 0 ? 'nasty' : 'realistic')
      const roll = dice(seed)
      let text = job.text
      let before: Preview | null = null
      for (let edit = 0; edit < 5; edit++) {
        for (const counted of [false, true]) {
          const files = Object.fromEntries([...job.files, [job.root, escaped(text)]])
          const { view: now } = view(files, { root: job.root, file: job.root, counted })
          const after = previewOf(now, before)
          hold(before, after, now)
          before = after
          drawn += after.picture.scene.shapes.length
        }
        text = edited(edit % 2 === 0 ? job.text : text, roll)
      }
    }
    expect(drawn).toBeGreaterThan(jobs * 100)
  },
)

/** Marks mean something to the reader of marked texts. */
function escaped(text: string): string {
  return text.replaceAll(/[‹›]/g, '')
}
