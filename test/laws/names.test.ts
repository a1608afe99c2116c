import { holdLaws } from './hold.ts'
import { NAMES } from './names.ts'

holdLaws(NAMES)
