import type { ListChange, Put } from '../../server/src/features/preview/list-change.ts'
import type {
  CoursePiece,
  CourseRow,
  FloorHead,
  Picture,
  StripItem,
} from '../../server/src/features/preview/picture.ts'
import type { PreviewChange } from '../../server/src/features/preview-change.ts'
import {
  type Check,
  either,
  isList,
  isNumber,
  isOneOf,
  isRecord,
  isText,
  isVariant,
  orNull,
} from './checks.ts'
import { isScene, isShape, isSheet } from './shape-checks.ts'

const isState = isOneOf('measuring', 'counting', 'counted', 'open', 'old')

const isFloorHead = isRecord<FloorHead>({ id: isText, product: isText, said: isList(isText) })

const isCourseRow = isRecord<CourseRow>({
  id: isText,
  floor: isText,
  course: isNumber,
  pieces: isList(
    isRecord<CoursePiece>({
      id: isText,
      piece: isNumber,
      plank: isNumber,
      size: isText,
      work: isText,
      offcut: isText,
    }),
  ),
})

const isStripItem = isRecord<StripItem>({
  id: isText,
  about: isOneOf('boxes', 'spare planks', 'narrowest rip', 'edges', 'holds', 'rules', 'missing'),
  label: isText,
  text: isText,
  weight: isOneOf('plain', 'open', 'alarm'),
  shapes: isList(isText),
})

const isPicture = isRecord<Picture>({
  state: isState,
  scene: isScene,
  floors: isList(isFloorHead),
  courses: isList(isCourseRow),
  strip: isList(isStripItem),
})

const isAfter = either(isOneOf('stays'), isRecord<{ id: string | null }>({ id: orNull(isText) }))

function isListChange<T>(item: Check<T>): Check<ListChange<T>> {
  return isRecord<ListChange<T>>({
    gone: isList(isText),
    put: isList(isRecord<Put<T>>({ item, after: isAfter })),
  })
}

type Part = Extract<PreviewChange, { kind: 'part' }>
type Whole = Extract<PreviewChange, { kind: 'whole' }>

export const isPreviewChange: Check<PreviewChange> = isVariant<PreviewChange>(
  'kind',
  new Map<string, Check<PreviewChange>>([
    ['whole', isRecord<Whole>({ kind: isOneOf('whole'), picture: isPicture })],
    [
      'part',
      isRecord<Part>({
        kind: isOneOf('part'),
        state: isState,
        sheet: orNull(isSheet),
        shapes: isListChange(isShape),
        floors: isListChange(isFloorHead),
        courses: isListChange(isCourseRow),
        strip: isListChange(isStripItem),
      }),
    ],
  ]),
)
