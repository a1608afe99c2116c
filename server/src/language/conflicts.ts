import type { RawLine } from './lines.ts'

/** A git merge left open in the file: the lines of its marks, by index, and the texts of both sides. */
export interface Conflict {
  readonly first: number
  readonly last: number
  /** Null where the marks that would enclose them are not all there. */
  readonly ours: readonly string[] | null
  readonly theirs: readonly string[] | null
}

const MARK = /^(<{7}|={7}|>{7}|\|{7})(?: |[\r\n]|$)/

/** Finds each stretch from `<<<<<<<` to `>>>>>>>`; an unclosed one ends at its last mark. */
export function findConflicts(text: string, lines: readonly RawLine[]): readonly Conflict[] {
  if (!/^[<=>|]{7}/m.test(text)) return []
  const conflicts: Conflict[] = []
  let marks: { readonly index: number; readonly sign: string }[] = []
  const close = (): void => {
    if (marks.length > 0) conflicts.push(between(marks, text, lines))
    marks = []
  }
  for (const [index, line] of lines.entries()) {
    const sign = MARK.exec(text.slice(line.start, line.start + 8))?.[1]?.charAt(0)
    if (sign === undefined) continue
    marks.push({ index, sign })
    if (sign === '>') close()
  }
  close()
  return conflicts
}

function between(
  marks: readonly { readonly index: number; readonly sign: string }[],
  text: string,
  lines: readonly RawLine[],
): Conflict {
  const side = (sign: string): readonly string[] | null => {
    const at = marks.findIndex((mark) => mark.sign === sign)
    const [from, to] = [marks[at]?.index, marks[at + 1]?.index]
    if (from === undefined || to === undefined) return null
    return lines.slice(from + 1, to).map((line) => text.slice(line.start, line.end).trim())
  }
  const [first, last] = [marks[0]!.index, marks[marks.length - 1]!.index]
  return { first, last, ours: side('<'), theirs: side('=') }
}
