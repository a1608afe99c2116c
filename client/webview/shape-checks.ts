import type { Point } from '../../server/src/geometry/point.ts'
import type { Lettering, Scene, Shape, ShapeKind } from '../../server/src/report/scene.ts'
import {
  type Check,
  isFlag,
  isList,
  isNumber,
  isOneOf,
  isPair,
  isRecord,
  isText,
  isVariant,
  orNull,
} from './checks.ts'

export const isPoint: Check<Point> = isRecord<Point>({ x: isNumber, y: isNumber })
const isRing = isList(isPoint)
const isRings = isList(isRing)
const isLine = isPair(isPoint)
const isLines = isList(isLine)

const isLettering = isRecord<Lettering>({
  text: isText,
  at: isPoint,
  height: isNumber,
  anchor: isOneOf('start', 'middle', 'end'),
  along: isPoint,
  tone: isOneOf('title', 'heading', 'plain', 'quiet', 'alarm'),
})
const isLetterings = isList(isLettering)

const isCut = isOneOf('whole', 'cut', 'rip', 'cut and rip')
const isEdgeKind = isOneOf(
  'base kept',
  'base off and back',
  'base new',
  'no base',
  'tub',
  'hearth',
  'slider',
  'cabinet',
  'nosing',
  'open edge',
  'carpet',
  'jamb',
  'transition',
  'obstacle',
)

type Fields<K extends ShapeKind> = {
  readonly [F in keyof Own<K>]-?: Check<Own<K>[F]>
}
type Own<K extends ShapeKind> = Omit<Extract<Shape, { kind: K }>, 'kind' | 'id' | 'span'>

/** The page is told no places in the text, so a shape's `span` is null. */
function shape<K extends ShapeKind>(kind: K, fields: Fields<K>): readonly [string, Check<Shape>] {
  const common = { kind: isOneOf(kind), id: isText, span: isOneOf(null) }
  return [kind, isRecord({ ...common, ...fields } as never)]
}

const stretch = { from: isPoint, to: isPoint }

export const isShape: Check<Shape> = isVariant<Shape>(
  'kind',
  new Map([
    shape('masonry', { region: isRings }),
    shape('room', { ring: isRing, title: isText }),
    shape('closet', { ring: isRing, throat: isRing, title: isText }),
    shape('wall face', { lines: isLines, open: isFlag, title: isText }),
    shape('sketch wall', { line: isLine, read: isFlag, lettering: isLettering, title: isText }),
    shape('sketch corner', { at: isPoint, radius: isNumber, back: isLines }),
    shape('piece', {
      piece: isNumber,
      course: isNumber,
      plank: isNumber,
      cut: isCut,
      ring: isRing,
      number: isLettering,
      title: isText,
    }),
    shape('seam', stretch),
    shape('joint', stretch),
    shape('rule', stretch),
    shape('opening', {
      of: isOneOf('door', 'opening', 'pass-through', 'open side'),
      throat: isRing,
      jambs: isLines,
      heads: isLines,
      leaves: isRings,
      swing: isRing,
      title: isText,
    }),
    shape('obstacle', {
      of: isOneOf('column', 'island', 'stairwell', 'vent', 'hearth'),
      ring: isRing,
      title: isText,
    }),
    shape('transition', { ...stretch, of: orNull(isEdgeKind), title: isText }),
    shape('working line', { ...stretch, head: isRing }),
    shape('dimension', {
      line: isLine,
      extensions: isLines,
      ticks: isLines,
      lettering: isLettering,
    }),
    shape('label', { plate: isRing, lines: isLetterings }),
    shape('rip label', {
      which: isOneOf('first', 'last'),
      leader: isLine,
      plate: isRing,
      lettering: isLettering,
    }),
    shape('breach', {
      rule: isOneOf('stagger', 'shortest end', 'narrowest rip', 'longest run', 'doorway joint'),
      at: isPoint,
      radius: isNumber,
      title: isText,
    }),
    shape('note', { lettering: isLettering }),
    shape('swatch', {
      of: isOneOf(
        'whole',
        'cut',
        'rip',
        'cut and rip',
        'masonry',
        'transition',
        'working line',
        'breach',
        'obstacle',
      ),
      ring: isRing,
    }),
    shape('scale bar', { filled: isRings, frame: isRing, marks: isLetterings }),
    shape('north', { needle: isRing, tail: isRing, lettering: isLettering }),
    shape('laying', { lines: isLines, heads: isRings, lettering: isLetterings }),
  ]),
)

const sheet = { title: isText, low: isPoint, high: isPoint, em: isNumber, run: isPoint }

export const isSheet = isRecord<Omit<Scene, 'shapes'>>(sheet)
export const isScene = isRecord<Scene>({ ...sheet, shapes: isList(isShape) })
