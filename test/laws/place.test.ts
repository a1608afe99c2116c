import { holdLaws } from './hold.ts'
import { PLACE } from './place.ts'

holdLaws(PLACE)
