/**
 * The codes of all warnings in the order of the alphabet: what an `accept` line may name. A test holds
 * the list against the checks that warn.
 */
export const WARNING_CODES: readonly string[] = [
  'check-disagrees',
  'closet-returns-disagree',
  'closing-error',
  'corner-not-square',
  'door-widths-disagree',
  'doorway-misses-room',
  'indent-extra',
  'indent-lost',
  'jambs-disagree',
  'loop-does-not-close',
  'names-alike',
  'obstacles-overlap',
  'parts-disagree',
  'readings-disagree',
  'repeats-disagree',
  'rooms-overlap',
  'shift-along-planks',
  'slant-disagrees',
  'start-across-planks',
  'thickness-disagrees',
  'touched-not-said',
  'version-later',
]
