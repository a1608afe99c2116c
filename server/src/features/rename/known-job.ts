import type { Measured } from '../../report/compiled.ts'

/** One of many jobs. The same file may be called otherwise in each: its address is one. */
export interface KnownJob {
  readonly measured: Measured
  readonly addressOf: (file: string) => string
}
