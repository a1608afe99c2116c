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
  'doorway-joint',
  'doorway-misses-room',
  'indent-extra',
  'indent-lost',
  'jambs-disagree',
  'longest-run',
  'loop-does-not-close',
  'names-alike',
  'narrowest-rip',
  'obstacles-overlap',
  'parts-disagree',
  'readings-disagree',
  'repeats-disagree',
  'rooms-overlap',
  'shift-along-planks',
  'shortest-end',
  'slant-disagrees',
  'stagger',
  'start-across-planks',
  'thickness-disagrees',
  'touched-not-said',
  'version-later',
]
