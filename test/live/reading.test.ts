import { expect, test } from 'vitest'
import { parse } from '../../server/src/language/parse.ts'
import { type LiveFile, parseAgain } from '../../server/src/language/parse-again.ts'
import { effort } from '../effort.ts'
import { dice } from '../generate/dice.ts'
import { randomJob } from '../generate/job.ts'
import { type Editing, edited } from './edits.ts'
import { plain } from './plain.ts'

test('a file read again after each edit is the file read afresh', { timeout: 3_600_000 }, () => {
  for (let seed = 0; seed < effort(12, 2000); seed++) {
    const { files, root } = randomJob(seed, seed % 2 === 0 ? 'nasty' : 'realistic')
    const thrown = dice(seed)
    let editing: Editing = { files: new Map([[root, files.get(root)!]]), before: [] }
    let live: LiveFile | null = null
    for (let turn = 0; turn < 25; turn++) {
      const text = editing.files.get(root)!
      live = parseAgain(live, root, text)
      expect(plain(live.tree), `${seed}, edit ${turn}`).toBe(plain(parse(root, text)))
      editing = edited(editing, thrown)
    }
  }
})
