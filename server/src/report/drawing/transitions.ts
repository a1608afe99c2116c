import type { Point } from '../../geometry/point.ts'
import type { TransitionLine } from '../scene.ts'
import { movedBy } from './side-by-side.ts'
import type { SubjectFloor } from './subject.ts'

/** The trim at the floor's rim: where another floor begins, at a slider, a hearth, a nosing. */
export function transitions(
  { area, published, rooms }: SubjectFloor,
  moves: ReadonlyMap<string, Point>,
): TransitionLine[] {
  const by = rooms.map((room) => moves.get(room)).find((move) => move !== undefined)
  const move = movedBy(by ?? { x: 0, y: 0 })
  return (area?.rim ?? []).flatMap((edge, i) =>
    edge.trim === null && edge.kind !== 'transition'
      ? []
      : [
          {
            kind: 'transition',
            id: `${published.floor}: trim ${i}`,
            span: edge.span,
            of: edge.kind,
            from: move(edge.from),
            to: move(edge.to),
            title: edge.trim === null ? edge.label : `${edge.label}: ${edge.trim}`,
          },
        ],
  )
}
