import { holdLaws } from './hold.ts'
import { PROMISES } from './promises.ts'

holdLaws(PROMISES)
