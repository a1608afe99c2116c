import { holdLaws } from './hold.ts'
import { INCLUDES } from './includes.ts'

holdLaws(INCLUDES)
