import { afterAll, beforeAll, expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { type Dice, dice } from '../generate/dice.ts'
import { edited } from '../live/edits.ts'
import { Editor } from './editor.ts'
import { PRODUCT, SOUND, uriOf } from './house.ts'

const SEQUENCES = effort(15, 400)
const STEPS = 14

let editor: Editor
let fresh: Editor
beforeAll(async () => {
  editor = await Editor.open()
  fresh = await Editor.open()
})
afterAll(() => {
  for (const { server } of [editor, fresh]) server.child.kill('SIGKILL')
})

const JOB = SOUND.replace(PRODUCT, 'include larch.floor\n')
const FILES: ReadonlyMap<string, string> = new Map([
  ['a.floor', JOB],
  ['b.floor', JOB.replaceAll('den', 'snug')],
  ['larch.floor', `include more.floor\n${PRODUCT}`],
  ['more.floor', PRODUCT.replace('larch', 'oak')],
])

/** Opens, closes or edits one of the files; those that are open, with their texts. */
function step(open: ReadonlyMap<string, string>, chance: Dice): ReadonlyMap<string, string> {
  const next = new Map(open)
  const name = chance.pick([...FILES.keys()])
  const text = open.get(name)
  if (text === undefined) {
    next.set(name, FILES.get(name)!)
    editor.openFile(uriOf(name), FILES.get(name)!)
  } else if (chance.chance(20)) {
    next.delete(name)
    editor.closeFile(uriOf(name))
  } else {
    const { files } = edited({ files: new Map([[name, text]]), before: [] }, chance)
    next.set(name, files.get(name)!)
    editor.change(uriOf(name), { text: files.get(name) })
  }
  return next
}

async function saidOf(one: Editor, names: Iterable<string>): Promise<unknown> {
  const all = []
  for (const name of names) all.push([name, await one.diagnostics(uriOf(name))])
  return all
}

test(`${SEQUENCES} sequences of opening, closing and editing end where a fresh server begins`, {
  timeout: 20 * 60_000,
}, async () => {
  for (let seed = 0; seed < SEQUENCES; seed++) {
    const chance = dice(seed)
    let open: ReadonlyMap<string, string> = new Map()
    for (let i = 0; i < STEPS; i++) {
      open = step(open, chance)
      if (chance.chance(25)) await saidOf(editor, open.keys())
    }
    for (const [name, text] of open) fresh.openFile(uriOf(name), text)
    await saidOf(editor, open.keys())
    await saidOf(fresh, open.keys())
    // Once all are looked at, none moves another any more.
    expect(await saidOf(editor, open.keys()), `sequence ${seed}`).toEqual(
      await saidOf(fresh, open.keys()),
    )
    await editor.closeAll()
    await fresh.closeAll()
  }
})
