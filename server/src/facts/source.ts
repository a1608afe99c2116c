/**
 * Where a rule or a value comes from, as the trade page labels it. A rule of thumb never looks like
 * a standard: `common practice` prints as such.
 */
export type Source =
  | { readonly kind: 'published'; readonly title: string }
  | { readonly kind: 'quoted'; readonly title: string }
  | { readonly kind: 'from memory'; readonly title: string }
  | { readonly kind: 'common practice' }
  | { readonly kind: 'computed' }
  /** The job's own text: a reading, a product line. */
  | { readonly kind: 'job' }

export const COMMON_PRACTICE: Source = { kind: 'common practice' }
export const COMPUTED: Source = { kind: 'computed' }
export const FROM_THE_JOB: Source = { kind: 'job' }

/** The source in words, for people. */
export function sourceInWords(source: Source): string {
  switch (source.kind) {
    case 'published':
      return source.title
    case 'quoted':
      return `${source.title} (as quoted elsewhere)`
    case 'from memory':
      return `${source.title} (from memory)`
    case 'common practice':
      return 'common practice, no source'
    case 'computed':
      return 'computed'
    case 'job':
      return 'the job file'
  }
}
