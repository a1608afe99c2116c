import { holdLaws } from './hold.ts'
import { NOTATION } from './notation.ts'

holdLaws(NOTATION)
