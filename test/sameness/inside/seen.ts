import type { Seen } from './order.ts'

const WINTER = new Date('2026-01-15T12:00:00Z')
const SUMMER = new Date('2026-07-15T12:00:00Z')

/** To be asked after the clock was set, and before anything is forbidden. */
export function look(place: string): Seen {
  const first = Date.now()
  return {
    zone: offsets(),
    locale: new Intl.NumberFormat().resolvedOptions().locale,
    clock: new Date(first).toISOString(),
    clockStands: Date.now() < first,
    sine: Math.sin(1),
    place,
  }
}

/** Of this environment's own zone, or of a named one. Names change between releases; offsets do not. */
export function offsets(timeZone?: string): string {
  return [WINTER, SUMMER]
    .map((instant) => {
      const parts = new Intl.DateTimeFormat('en', {
        ...(timeZone === undefined ? {} : { timeZone }),
        timeZoneName: 'longOffset',
      }).formatToParts(instant)
      return parts.find(({ type }) => type === 'timeZoneName')?.value ?? ''
    })
    .join(' ')
}
