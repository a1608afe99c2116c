import type { PreviewChange } from '../../server/src/features/preview-change.ts'
import { isPreviewChange } from './change-checks.ts'
import { type Check, isList, isOneOf, isRecord, isText, isVariant } from './checks.ts'

/** What the extension says to the page. */
export type ToPage =
  /** The picture, or what of it differs from the one before. */
  | { readonly type: 'preview'; readonly change: PreviewChange }
  /** The shapes of the line that the cursor is on. */
  | { readonly type: 'cursor'; readonly ids: readonly string[] }
  /** Said over the drawing until it is said anew; nothing where `text` is empty. */
  | { readonly type: 'notice'; readonly text: string }

/** What the page says to the extension. */
export type FromPage =
  /** It shows nothing yet, or could not apply a change: it wants the whole picture and the cursor. */
  | { readonly type: 'ready' }
  /** A shape was chosen: show its text. */
  | { readonly type: 'go to'; readonly id: string }
  /** The drawing is wanted as a file. */
  | { readonly type: 'export' }

type To<T extends ToPage['type']> = Extract<ToPage, { type: T }>
type From<T extends FromPage['type']> = Extract<FromPage, { type: T }>

const isToPage: Check<ToPage> = isVariant<ToPage>(
  'type',
  new Map<string, Check<ToPage>>([
    ['preview', isRecord<To<'preview'>>({ type: isOneOf('preview'), change: isPreviewChange })],
    ['cursor', isRecord<To<'cursor'>>({ type: isOneOf('cursor'), ids: isList(isText) })],
    ['notice', isRecord<To<'notice'>>({ type: isOneOf('notice'), text: isText })],
  ]),
)

const isFromPage: Check<FromPage> = isVariant<FromPage>(
  'type',
  new Map<string, Check<FromPage>>([
    ['ready', isRecord<From<'ready'>>({ type: isOneOf('ready') })],
    ['go to', isRecord<From<'go to'>>({ type: isOneOf('go to'), id: isText })],
    ['export', isRecord<From<'export'>>({ type: isOneOf('export') })],
  ]),
)

/** The message, or null where it is none that the page knows: neither side trusts what it is sent. */
export function asToPage(value: unknown): ToPage | null {
  return isToPage(value) ? value : null
}

/** The message, or null where it is none that the extension knows. */
export function asFromPage(value: unknown): FromPage | null {
  return isFromPage(value) ? value : null
}
