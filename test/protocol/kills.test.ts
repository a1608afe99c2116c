import { setTimeout as sleep } from 'node:timers/promises'
import { afterAll, expect, test } from 'vitest'
import { median } from '../bench/median.ts'
import { effort } from '../effort.ts'
import { type Dice, dice } from '../generate/dice.ts'
import { type Editing, edited } from '../live/edits.ts'
import { Editor } from './editor.ts'
import { PRODUCT, SOUND, uriOf } from './house.ts'

const ROUNDS = effort(10, 1_000)

const editors = new Set<Editor>()
afterAll(() => {
  for (const { server } of editors) server.child.kill('SIGKILL')
})

async function start(): Promise<Editor> {
  const editor = await Editor.open()
  editors.add(editor)
  return editor
}

/** All files of a job, opened or brought up to date. */
async function said(editor: Editor, { files }: Editing): Promise<unknown> {
  for (const [name, text] of files) editor.openFile(uriOf(name), text)
  const all = new Map<string, unknown>()
  // Twice: a file may be part of the job of a later one, which speaks of it too.
  for (const name of [...files.keys(), ...files.keys()])
    all.set(name, await editor.diagnostics(uriOf(name)))
  return all
}

/** Types for a while and kills the server at some moment of it, at work or at rest. */
async function typeAndKill(editor: Editor, start: Editing, chance: Dice): Promise<Editing> {
  let editing = start
  for (let keys = chance.between(1, 12); keys > 0; keys--) {
    const next = edited(editing, chance)
    for (const [name, text] of next.files)
      if (text !== editing.files.get(name)) editor.change(uriOf(name), { text })
    editing = next
    if (chance.chance(30)) await sleep(chance.below(25))
  }
  if (chance.chance(70)) await sleep(chance.below(60))
  if (chance.chance(30)) editor.server.write('Content-Length: 90\r\n\r\n{"jsonrpc":"2.0",')
  editor.server.child.kill('SIGKILL')
  expect([await editor.server.ended, editor.server.errors]).toEqual(['SIGKILL', []])
  return editing
}

test(`${ROUNDS} kills while typing: each time it is back at once with the same diagnostics`, {
  timeout: 40 * 60_000,
}, async () => {
  const chance = dice(2)
  const unharmed = await start()
  let editing: Editing = {
    files: new Map([
      ['job.floor', SOUND.replace(PRODUCT, 'include larch.floor\n')],
      ['larch.floor', PRODUCT],
    ]),
    before: [],
  }
  let editor = await start()
  await said(editor, editing)
  const times: number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    editing = await typeAndKill(editor, editing, chance)
    editors.delete(editor)
    const since = performance.now()
    editor = await start()
    const back = await said(editor, editing)
    times.push(performance.now() - since)
    expect(back, `round ${round}`).toEqual(await said(unharmed, editing))
    expect(editor.server.strays).toEqual([])
    expect(editor.server.errors).toEqual([])
  }
  // Two seconds are all that a person may wait; what the machine is busy with is no fault of the server.
  console.log(`back after ${Math.round(median(times))} ms, the middle one of ${ROUNDS} kills`)
})
