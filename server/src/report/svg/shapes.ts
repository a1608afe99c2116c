import type { Nm } from '../../units/length.ts'
import type {
  BreachMark,
  Dimension,
  Label,
  LayingMark,
  NorthMark,
  ObstacleShape,
  OpeningShape,
  PieceShape,
  RipLabel,
  ScaleBar,
  Shape,
  SketchCorner,
  SketchWall,
  Swatch,
  WallFace,
  WorkingLine,
} from '../scene.ts'
import { type Element, h } from './element.ts'
import { lettered } from './lettering.ts'
import { mm } from './number.ts'
import type { Palette } from './palette.ts'
import { closed, closedAll, open, strokes } from './path.ts'
import type { Pen } from './pen.ts'
import { HAIRLINE, HEAVY, MEDIUM, THIN, weight } from './weights.ts'

/** The elements of one shape. What all shapes of a kind share stands on their group (`groupStyle`). */
export function drawn(shape: Shape, pen: Pen): Element[] {
  const { place } = pen
  switch (shape.kind) {
    case 'masonry':
      return [h('path', { d: closedAll(place, shape.region), 'fill-rule': 'evenodd' })]
    case 'room':
      return [h('path', { d: closed(place, shape.ring) })]
    case 'closet':
      return [h('path', { d: closed(place, shape.ring) + closed(place, shape.throat) })]
    case 'wall face':
      return wallFace(shape, pen)
    case 'sketch wall':
      return sketchWall(shape, pen)
    case 'sketch corner':
      return sketchCorner(shape, pen)
    case 'piece':
      return piece(shape, pen)
    case 'seam':
    case 'joint':
    case 'rule':
      return [h('path', { d: open(place, [shape.from, shape.to]) })]
    case 'transition':
      return [titled({ d: open(place, [shape.from, shape.to]) }, shape.title)]
    case 'opening':
      return opening(shape, pen)
    case 'obstacle':
      return obstacle(shape, pen)
    case 'working line':
      return workingLine(shape, pen)
    case 'dimension':
      return dimension(shape, pen)
    case 'label':
      return label(shape, pen)
    case 'rip label':
      return ripLabel(shape, pen)
    case 'breach':
      return breach(shape, pen)
    case 'note':
      return [lettered(pen, shape.lettering)]
    case 'swatch':
      return swatch(shape, pen)
    case 'scale bar':
      return scaleBar(shape, pen)
    case 'north':
      return northMark(shape, pen)
    case 'laying':
      return laying(shape, pen)
  }
}

function titled(attributes: Record<string, string>, title: string): Element {
  return h('path', attributes, h('title', {}, title))
}

function pieceFill(cut: PieceShape['cut'], { board }: Palette): string {
  return cut === 'whole' ? board : `url(#${cut.replaceAll(' ', '-')})`
}

function pieceGround(cut: PieceShape['cut'], { board, cutGround, ripGround }: Palette): string {
  return cut === 'whole' ? board : cut === 'cut' ? cutGround : ripGround
}

/** Pieces that were sawn are hatched and have a heavier outline as well as another ground. */
function piece(shape: PieceShape, pen: Pen): Element[] {
  const { place, em, palette } = pen
  const outline =
    shape.cut === 'whole' ? {} : { stroke: palette.joint, 'stroke-width': weight(em, THIN + 1) }
  const attributes = {
    class: shape.cut,
    d: closed(place, shape.ring),
    fill: pieceFill(shape.cut, palette),
    ...outline,
  }
  return [
    h(
      'g',
      { 'data-piece': `${shape.piece}`, 'data-plank': `${shape.plank}` },
      titled(attributes, shape.title),
      lettered(pen, shape.number, pieceGround(shape.cut, palette)),
    ),
  ]
}

function wallFace({ lines, open, title }: WallFace, { place, em }: Pen): Element[] {
  const edge = { 'stroke-width': weight(em, THIN), 'stroke-dasharray': dashes(em, 28, 22) }
  return [titled({ d: strokes(place, lines), ...(open ? edge : {}) }, title)]
}

/** What is read stands out from what is only guessed at. */
function sketchWall({ line, read, lettering, title }: SketchWall, pen: Pen): Element[] {
  const { place, em, palette } = pen
  const ink = read
    ? { stroke: palette.ink, 'stroke-width': weight(em, HEAVY) }
    : { stroke: palette.unread, 'stroke-width': weight(em, MEDIUM) }
  const attributes = { class: read ? 'read' : 'to-read', d: open(place, line), ...ink }
  return [titled(attributes, title), lettered(pen, lettering, palette.paper)]
}

function sketchCorner({ at, radius, back }: SketchCorner, { place, em, palette }: Pen): Element[] {
  const { x, y } = place(at)
  const dotted = { 'stroke-dasharray': dashes(em, 1, 30), 'stroke-linecap': 'round' }
  return [
    h('path', { d: strokes(place, back), stroke: palette.unread, ...dotted }),
    h('circle', { cx: mm(x), cy: mm(y), r: mm(radius), ...dotted }),
  ]
}

function dashes(em: Nm, ...lengths: readonly number[]): string {
  return lengths.map((length) => weight(em, length)).join(' ')
}

function opening(shape: OpeningShape, { place, em, palette }: Pen): Element[] {
  const throat = { d: closed(place, shape.throat), fill: 'none', stroke: 'none' }
  const line = (d: string, more: Record<string, string>): Element[] =>
    d === '' ? [] : [h('path', { d, fill: 'none', ...more })]
  return [
    titled({ ...throat, 'pointer-events': 'all' }, shape.title),
    ...line(strokes(place, shape.jambs), { 'stroke-width': weight(em, MEDIUM) }),
    ...line(strokes(place, shape.heads), {
      'stroke-width': weight(em, THIN),
      'stroke-dasharray': dashes(em, 28, 22),
    }),
    ...line(open(place, shape.swing), {
      stroke: palette.softInk,
      'stroke-width': weight(em, HAIRLINE),
    }),
    ...shape.leaves.map((leaf) =>
      h('path', {
        d: closed(place, leaf),
        fill: palette.paper,
        'stroke-width': weight(em, THIN),
      }),
    ),
  ]
}

/** A void is crossed from corner to corner; anything that stands there is filled. */
function obstacle(shape: ObstacleShape, { place, em, palette }: Pen): Element[] {
  const isVoid = shape.of === 'stairwell' || shape.of === 'vent'
  const outline = titled(
    { d: closed(place, shape.ring), fill: isVoid ? palette.paper : palette.beside },
    shape.title,
  )
  const [a, b, c, d] = shape.ring
  if (!isVoid || !a || !b || !c || !d || shape.ring.length !== 4) return [outline]
  const across = [[a, c] as const, [b, d] as const]
  return [outline, h('path', { d: strokes(place, across), 'stroke-width': weight(em, HAIRLINE) })]
}

function workingLine(shape: WorkingLine, { place, em }: Pen): Element[] {
  return [
    h('path', {
      d: open(place, [shape.from, shape.to]),
      fill: 'none',
      'stroke-dasharray': dashes(em, 90, 32, 16, 32),
    }),
    h('path', { d: closed(place, shape.head), stroke: 'none' }),
  ]
}

function dimension(shape: Dimension, pen: Pen): Element[] {
  const { place, em, palette } = pen
  const line = strokes(place, [shape.line])
  return [
    h('path', { d: line, stroke: palette.paper, 'stroke-width': weight(em, 24) }),
    h('path', { d: line + strokes(place, shape.extensions) }),
    h('path', { d: strokes(place, shape.ticks), 'stroke-width': weight(em, MEDIUM) }),
    lettered(pen, shape.lettering, palette.paper),
  ]
}

function label(shape: Label, pen: Pen): Element[] {
  const { place, em, palette } = pen
  return [
    h('path', {
      d: closed(place, shape.plate),
      fill: palette.paper,
      'fill-opacity': '0.94',
      stroke: palette.paper,
      'stroke-opacity': '0.94',
      'stroke-width': weight(em, 30),
      'stroke-linejoin': 'round',
    }),
    ...shape.lines.map((line) => lettered(pen, line)),
  ]
}

function ripLabel(shape: RipLabel, pen: Pen): Element[] {
  const { place, palette } = pen
  return [
    h('path', { d: open(place, shape.leader) }),
    lettered(pen, shape.lettering, palette.paper),
  ]
}

function breach(shape: BreachMark, { place, em }: Pen): Element[] {
  const { x, y } = place(shape.at)
  return [
    h(
      'circle',
      { cx: mm(x), cy: mm(y), r: mm(shape.radius), 'stroke-width': weight(em, MEDIUM) },
      h('title', {}, shape.title),
    ),
  ]
}

function swatch(shape: Swatch, pen: Pen): Element[] {
  const { place, em, palette } = pen
  const d = closed(place, shape.ring)
  const box = (fill: string, stroke: string, line: number): Element[] => [
    h('path', { d, fill, stroke, 'stroke-width': weight(em, line) }),
  ]
  switch (shape.of) {
    case 'whole':
      return box(palette.board, palette.joint, HAIRLINE)
    case 'cut':
    case 'rip':
    case 'cut and rip':
      return box(pieceFill(shape.of, palette), palette.joint, THIN + 1)
    case 'masonry':
      return box('url(#wall)', palette.ink, MEDIUM)
    case 'obstacle':
      return box(palette.beside, palette.ink, THIN)
    case 'breach':
    case 'transition':
    case 'working line':
      return middleSwatch(shape, pen)
  }
}

/** Samples that are lines or marks, in the middle of their field. */
function middleSwatch(shape: Swatch, { place, em, palette }: Pen): Element[] {
  const [low, , high] = shape.ring.map(place)
  if (!low || !high) return []
  const y = mm((low.y + high.y) / 2)
  if (shape.of === 'breach')
    return [
      h('circle', {
        cx: mm((low.x + high.x) / 2),
        cy: y,
        r: weight(em, 50),
        fill: 'none',
        stroke: palette.alarm,
        'stroke-width': weight(em, MEDIUM),
      }),
    ]
  const trim = shape.of === 'transition'
  return [
    h('path', {
      d: `M${mm(low.x)} ${y}H${mm(high.x)}`,
      stroke: trim ? palette.trim : palette.working,
      'stroke-width': weight(em, trim ? HEAVY : MEDIUM),
      'stroke-dasharray': trim ? null : dashes(em, 90, 32, 16, 32),
    }),
  ]
}

function scaleBar(shape: ScaleBar, pen: Pen): Element[] {
  const { place, palette } = pen
  return [
    h('path', { d: closed(place, shape.frame), fill: palette.paper }),
    h('path', { d: closedAll(place, shape.filled), fill: palette.ink }),
    ...shape.marks.map((mark) => lettered(pen, mark)),
  ]
}

function northMark(shape: NorthMark, pen: Pen): Element[] {
  const { place, palette } = pen
  return [
    h('path', { d: closed(place, shape.needle), fill: palette.ink }),
    h('path', { d: closed(place, shape.tail), fill: palette.paper }),
    lettered(pen, shape.lettering),
  ]
}

function laying(shape: LayingMark, pen: Pen): Element[] {
  const { place, palette } = pen
  return [
    h('path', { d: strokes(place, shape.lines) }),
    ...shape.heads.map((head) =>
      h('path', { d: closed(place, head), fill: palette.softInk, stroke: 'none' }),
    ),
    ...shape.lettering.map((line) => lettered(pen, line)),
  ]
}
