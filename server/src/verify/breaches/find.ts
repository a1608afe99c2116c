import type { Found } from '../found.ts'
import type { Floor } from '../layout.ts'
import type { Breach } from '../report.ts'
import { doorwayJointBreaches } from './doorway-joint.ts'
import { longestRunBreaches } from './longest-run.ts'
import { narrowestRipBreaches } from './narrowest-rip.ts'
import { shortestEndBreaches } from './shortest-end.ts'
import { staggerBreaches } from './stagger.ts'

/** Every breach of a soft rule, found from the rings. */
export function findBreaches(floor: Floor, found: Found): readonly Breach[] {
  return [
    ...staggerBreaches(floor, found),
    ...shortestEndBreaches(floor, found),
    ...narrowestRipBreaches(floor),
    ...longestRunBreaches(floor),
    ...doorwayJointBreaches(floor, found),
  ]
}
