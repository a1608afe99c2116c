import { describe, expect, test } from 'vitest'
import type { Message } from '../../../server/src/facts/message.ts'
import { parse } from '../../../server/src/language/parse.ts'
import { BREACH_CODES } from '../../../server/src/layout/breach-messages.ts'
import { effort } from '../../effort.ts'
import { EXAMPLE_JOBS, EXAMPLE_TEXTS } from '../../examples/read-example.ts'
import { randomJob } from '../../generate/job.ts'
import {
  blockAt,
  type Damage,
  type Files,
  figuresOf,
  fresh,
  lineDamages,
  linesOf,
  type Seen,
  shown,
  surveyed,
  tokenDamages,
  whole,
} from '../sweep.ts'

/** The first jobs by chance that lie in several files and lay more than one floor. */
const GENERATED = Array.from({ length: 400 }, (_, seed) => randomJob(seed))
  .filter(({ sound, files }) => sound && files.size > 2)
  .filter(({ files }) => [...files.values()].join('\n').match(/^floor /gm)!.length > 1)
  .slice(0, 1)

const JOBS: readonly { readonly name: string; readonly root: string; readonly files: Files }[] = [
  ...EXAMPLE_JOBS.map((root) => ({ name: root, root, files: reached(EXAMPLE_TEXTS, root) })),
  ...GENERATED.map(({ seed, root, files }) => ({ name: `the job of seed ${seed}`, root, files })),
]

/** Every so many damages are tried; the full share tries all. */
const EVERY = effort(71, 1)
const EVERY_WHOLE = effort(1499, 11)

const BREACHES: ReadonlySet<string> = new Set(Object.values(BREACH_CODES))

/** The root and what it includes, however deep. */
function reached(texts: Files, root: string): Files {
  const found = new Map([[root, texts.get(root)!]])
  for (const text of found.values())
    for (const [, name] of text.matchAll(/^include (\S+)/gm)) found.set(name!, texts.get(name!)!)
  return found
}

function* damagesOf(files: Files): Generator<Damage> {
  for (const file of files.keys()) {
    yield* tokenDamages(files, file)
    yield* lineDamages(files, file)
  }
}

function sampled(files: Files, every: number): readonly Damage[] {
  return [...damagesOf(files)].filter((_, index) => index % every === 0)
}

/** What is wrong with the answer to one damage; empty where nothing is. */
function faults(damage: Damage, after: Seen, before: Seen): readonly string[] {
  const said = fresh(after, before)
  const text = after.files.get(damage.file)!
  const isNear = (line: number) => Math.abs(line - damage.line) <= 1
  const others = said.filter(({ code }) => code !== 'name-unknown')
  const unread = freshlyUnread(damage, before)
  const [from, to] = blockAt(text, damage.line)
  const isAtHome = (line: number) => line >= from - 1 && line < to
  const title = text
    .split('\n')
    [from - 1]!.replace(/^\S+ +/, '')
    .replace(/ {2}#.*/, '')
  const home = said.some(
    (one) => linesOf(one, after, damage.file).some(isAtHome) || one.text.includes(title),
  )
  // A figure that all rooms hang on may be wrong for each of them in its own way.
  const most = speaksForAll(damage, before) && !unread ? 3 * before.rooms.length : 3
  return [
    ...(said.length > most ? [`${said.length} messages`] : []),
    ...(referencesApart(said, after, damage) ? ['references to one name do not fold'] : []),
    ...(unread && others[0] !== undefined && !linesOf(others[0], after, damage.file).some(isNear)
      ? ['the first message is not within a line of the damage']
      : []),
    ...(said.length > 0 &&
    /^\s/.test(before.files.get(damage.file)!.split('\n')[damage.line - 1]!) &&
    !home
      ? ['no message stands in the damaged block, or names it']
      : []),
  ]
}

/** Names that nothing has, of one kind, said in two messages away from the damaged line. */
function referencesApart(said: readonly Message[], after: Seen, damage: Damage): boolean {
  const kinds = said
    .filter(({ code }) => code === 'name-unknown')
    .filter((one) => linesOf(one, after, damage.file)[0] !== damage.line)
    .map(({ text }) => /^(?:There are no|No) (\w+?)s? /.exec(text)![1])
  return new Set(kinds).size < kinds.length
}

/** Whether the damaged file has something that cannot be read and was not there before. */
function freshlyUnread({ file, files }: Damage, before: Seen): boolean {
  const codes = parse(file, files.get(file)!).messages.map(({ code }) => code)
  const old = parse(file, before.files.get(file)!).messages.map(({ code }) => code)
  return codes.length > old.length
}

/** Rooms outside the damaged block, and outside the one above it when its first line is damaged. */
function otherRooms({ file, line }: Damage, before: Seen): readonly string[] {
  const text = before.files.get(file)!
  const [from] = blockAt(text, line)
  const [above] = from === line ? blockAt(text, Math.max(1, from - 1)) : [from]
  const touched = (name: string) =>
    [from, above].some((at) => text.split('\n')[at - 1]!.startsWith(`room ${name}`))
  return before.rooms.map(({ room }) => room.name.text).filter((name) => !touched(name))
}

/** Damage to a line that speaks for all rooms, or to the name of a file, moves them all. */
function speaksForAll({ file, line }: Damage, before: Seen): boolean {
  const first = before.files.get(file)!.split('\n')[line - 1]!
  return /^(?:floorscribe|job|units|tape|walls|base|include)\b/.test(first)
}

describe.each(JOBS)('$name', ({ root, files }) => {
  const sound = surveyed(files, root)
  const before = new Map(sound.rooms.map((room) => [room.room.name.text, figuresOf(room)]))

  test('at most 3 messages for one damage, the first within a line of it, references folded', () => {
    const wrong = sampled(files, EVERY).flatMap((damage) => {
      const after = surveyed(damage.files, root)
      const found = faults(damage, after, sound)
      const told = fresh(after, sound).map((one) => shown(one, after))
      const where = `${damage.file}:${damage.line} ${damage.kind}: ${found.join(', ')}`
      return found.length === 0 ? [] : [[where, ...told].join('\n')]
    })
    expect(wrong.join('\n\n')).toBe('')
  })

  test('the other rooms keep their figures to the digit', () => {
    let held = 0
    for (const damage of sampled(files, EVERY)) {
      if (speaksForAll(damage, sound)) continue
      const after = surveyed(damage.files, root)
      const now = new Map(after.rooms.map((room) => [room.room.name.text, figuresOf(room)]))
      for (const name of otherRooms(damage, sound)) {
        const where = `${damage.file}:${damage.line} ${damage.kind}, ${name}`
        expect(now.get(name), where).toBe(before.get(name))
        held += 1
      }
    }
    expect(held).toBeGreaterThan(10)
  })

  test('the whole job, floors and counts: at most 3 messages', () => {
    const all = whole(files, root)
    const wrong = sampled(files, EVERY_WHOLE).flatMap((damage) => {
      const after = whole(damage.files, root)
      // How the changed floor is laid is judged afresh, and is no message about the damage.
      const told = fresh(after, all).filter(({ code }) => !BREACHES.has(code))
      const where = `${damage.file}:${damage.line} ${damage.kind}`
      return told.length <= 3 ? [] : [[where, ...told.map((one) => shown(one, after))].join('\n')]
    })
    expect(wrong.join('\n\n')).toBe('')
  })
})

describe.each(JOBS)('every beginning of $name', ({ root, files }) => {
  test('at most 3 messages, and what is wrong stands where the text ends', () => {
    const text = files.get(root)!
    const all = surveyed(files, root)
    for (let cut = 0; cut <= text.length; cut += effort(61, 1)) {
      const part = text.slice(0, cut)
      const seen = surveyed(new Map(files).set(root, part), root)
      const told = fresh(seen, all)
      const list = told.map((one) => shown(one, seen)).join('\n')
      expect(told.length, `${part.slice(-60)}\n${list}`).toBeLessThanOrEqual(3)
      const last = part.split('\n').length
      // A room whose last wall is half typed misses closing by what is still to come.
      const wrong = told.filter(
        ({ weight, code, span }) =>
          weight === 'error' &&
          span.file === root &&
          code !== 'name-unknown' &&
          code !== 'closing-error',
      )
      for (const one of wrong)
        expect(
          last - linesOf(one, seen, root)[0]!,
          `${part.slice(-60)}\n${list}`,
        ).toBeLessThanOrEqual(1)
    }
  })
})
