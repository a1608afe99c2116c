import { expect, test } from 'vitest'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { EXAMPLE_JOBS, EXAMPLE_TEXTS, surveyExample } from './read-example.ts'

/** What one damaged line may look like: a misspelt word, a cut figure, a stray mark. */
const DAMAGE: readonly ((line: string) => string)[] = [
  (line) => line.replace(/[a-z]/, 'qz'),
  (line) => line.slice(0, Math.ceil(line.length / 2)),
  (line) => `${line} @@@`,
]

/** A room's own figures: its closing and its area, wherever the plan puts it. */
function figuresOf(room: SurveyedRoom): string {
  const corner = room.outline[0]
  const shape = room.outline.map((point) => [point.x - corner!.x, point.y - corner!.y])
  return JSON.stringify([room.status, room.closing, shape])
}

/** The room whose block a line lies in, or null outside rooms. */
function roomAt(lines: readonly string[], index: number): string | null {
  for (let at = index; at >= 0; at--) {
    const head = /^room (.*?)(?: {2}#.*)?$/.exec(lines[at]!)
    if (head) return head[1]!
    if (/^\S/.test(lines[at]!)) return null
  }
  return null
}

for (const job of EXAMPLE_JOBS) {
  test(`a broken line anywhere in ${job} leaves the other rooms' figures as they were`, () => {
    const lines = EXAMPLE_TEXTS.get(job)!.split('\n')
    const whole = new Map(
      surveyExample(job, EXAMPLE_TEXTS.get(job)!).rooms.map((room) => [
        room.room.name.text,
        figuresOf(room),
      ]),
    )
    let held = 0
    lines.forEach((line, index) => {
      const inRoom = roomAt(lines, index)
      if (inRoom === null || line.trim() === '' || /^room /.test(line)) return
      for (const damage of DAMAGE) {
        const broken = lines.with(index, damage(line)).join('\n')
        for (const room of surveyExample(job, broken).rooms) {
          const name = room.room.name.text
          if (name === inRoom || !whole.has(name)) continue
          expect(figuresOf(room), `line ${index + 1}: ${damage(line)}, ${name}`).toBe(
            whole.get(name),
          )
          held++
        }
      }
    })
    expect(held).toBeGreaterThan(0)
  })
}
