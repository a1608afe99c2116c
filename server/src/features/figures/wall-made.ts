import { basePlaneOf, grownCorners } from '../../survey/base-plane.ts'
import { lengthFrom } from '../../survey/reading.ts'
import { spreadCorners } from '../../survey/spread.ts'
import type { SurveyedRoom } from '../../survey/survey.ts'
import { lengthOf, minus, type Vector } from '../../survey/vector.ts'
import { type ReadWall, readWalls } from '../../survey/walls.ts'
import type { Nm } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'

/** What becomes of one wall's reading; lengths in whole nanometres. */
export interface WallMade {
  /** What counts of it: the mean where it was taken again. */
  readonly read: Nm
  /** By how much it was brought to what the room's other walls were read to. */
  readonly plane: Nm
  /** Its share of the closing error, or what the distances make of it. */
  readonly share: Nm
  /** How long it is once the room is closed: what diagonals and widths are held against. */
  readonly closed: Nm
  /** What a base between tape and floor adds at its ends. */
  readonly grown: Nm
  /** How long the floor's rim is along it. */
  readonly made: Nm
}

const known = new WeakMap<SurveyedRoom, readonly WallMade[]>()

/** What becomes of each wall of a measured room; empty while it has no shape. Worked out once a room. */
export function wallsMade(surveyed: SurveyedRoom): readonly WallMade[] {
  const there = known.get(surveyed)
  if (there !== undefined) return there
  const walls = surveyed.status === 'measured' ? readWalls(surveyed.room) : null
  const made = walls === null ? [] : followed(surveyed, walls)
  known.set(surveyed, made)
  return made
}

function followed(
  { room, corners, closing }: SurveyedRoom,
  walls: readonly ReadWall[],
): readonly WallMade[] {
  const isSolved = closing === null || closing.rule === 'distances'
  const closed = isSolved ? grownCorners(corners, -basePlaneOf(room).grown) : spreadCorners(walls)
  return walls.map(({ nm, wall }, i) => {
    const read = lengthFrom(wall.reading)!.nm
    const [before, rim] = [lengthAt(closed, i), lengthAt(corners, i)]
    return {
      read: roundToNm(read),
      plane: roundToNm(nm - read),
      share: settled(before - nm),
      closed: roundToNm(before),
      grown: settled(rim - before),
      made: roundToNm(rim),
    }
  })
}

function lengthAt(corners: readonly Vector[], wall: number): number {
  return lengthOf(minus(corners[(wall + 1) % corners.length]!, corners[wall]!))
}

/** Rounding the corners moves them by some nanometres: that is no share of anything. */
function settled(nm: number): Nm {
  return Math.abs(nm) < 10 ? 0 : roundToNm(nm)
}
