import { type PartPlace, placesInParts } from './on-wall.ts'
import type { Outline } from './outline.ts'

/** The parts of a room's walls that stand for something, handed out in written order. */
export interface Parts {
  /** The next part of a kind on a wall, for a line that stands for it; null when there is none. */
  readonly take: (wall: number, kind: string) => PartPlace | null
  /** The parts of a kind that no line stands for. */
  readonly left: (kind: string) => readonly { readonly wall: number; readonly part: PartPlace }[]
}

/** Starts handing out the parts of a room. */
export function partsOf(room: Outline): Parts {
  const waiting = new Map(room.walls.map(({ index }) => [index, [...placesInParts(room, index)]]))
  const take = (wall: number, kind: string): PartPlace | null => {
    const parts = waiting.get(wall) ?? []
    const at = parts.findIndex((part) => part.of === kind)
    return at < 0 ? null : parts.splice(at, 1)[0]!
  }
  const left = (kind: string) =>
    [...waiting].flatMap(([wall, parts]) =>
      parts.filter((part) => part.of === kind).map((part) => ({ wall, part })),
    )
  return { take, left }
}
