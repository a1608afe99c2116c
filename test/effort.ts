/**
 * How often a test of many cases goes round: `quick` in every run, `full` in `npm run test:full`. Both
 * use the same fixed seeds, so a failure of either can be had again.
 */
export function effort(quick: number, full: number): number {
  return process.env.FLOORSCRIBE_FULL === '1' ? full : quick
}
