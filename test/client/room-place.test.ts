import { describe, expect, test } from 'vitest'
import { roomPlace } from '../../client/src/room-place.ts'

/** The text after a room (`ROOM`) was put in where the cursor (|) stands. */
function withRoom(text: string): string {
  const cursor = text.slice(0, text.indexOf('|')).split('\n').length - 1
  const lines = text.replace('|', '').split('\n')
  const { line, before, after } = roomPlace(lines, cursor)
  lines[line] += `${before}ROOM${after}`
  return lines.join('\n')
}

describe('a new room', () => {
  test('goes below the block of the cursor', () => {
    expect(withRoom('room a\n  nor|th 1\n  east 2\n\nroom b\n')).toBe(
      'room a\n  north 1\n  east 2\n\nROOM\n\nroom b\n',
    )
  })

  test('is parted from a block that follows without a blank line', () => {
    expect(withRoom('room a|\n  north 1\nroom b')).toBe('room a\n  north 1\n\nROOM\n\nroom b')
  })

  test('stands at the end of a text that ends with its block', () => {
    expect(withRoom('room a|\n  north 1')).toBe('room a\n  north 1\n\nROOM\n')
    expect(withRoom('room a|\n  north 1\n')).toBe('room a\n  north 1\n\nROOM\n')
  })

  test('leaves remarks in column one with the block above them', () => {
    expect(withRoom('room a|\n  north 1\n# doubtful\n\nroom b')).toBe(
      'room a\n  north 1\n# doubtful\n\nROOM\n\nroom b',
    )
  })

  test('opens an empty text', () => {
    expect(withRoom('|')).toBe('ROOM\n')
    expect(withRoom('\n|')).toBe('\nROOM\n')
  })
})
