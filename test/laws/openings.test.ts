import { holdLaws } from './hold.ts'
import { OPENINGS } from './openings.ts'

holdLaws(OPENINGS)
