import { holdLaws } from './hold.ts'
import { WRITING } from './writing.ts'

holdLaws(WRITING)
