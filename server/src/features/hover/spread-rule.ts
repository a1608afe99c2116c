import type { Source } from '../../facts/source.ts'
import type { Closing } from '../../survey/survey.ts'

/** Where the rules that spread a closing error are published. */
export const SPREAD_SOURCE: Source = { kind: 'published', title: 'NPTEL 105107122, module 9' }

/** What one component of a closing error may come to. */
export const ALLOWED_MISS = 'allowed = 2·√Σσ² over the walls along it'

/** How a closing error is spread, by the rule that a room is closed by. */
export const SPREAD_FORMULAS: Readonly<Record<Exclude<Closing['rule'], 'distances'>, string>> = {
  transit: 'share = −(closing error along it) × its length ÷ all walls along it',
  compass:
    'walls given by a way keep it; of all corrections c that close the room, those with the least Σ c² ÷ length',
}
