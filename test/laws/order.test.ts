import { holdLaws } from './hold.ts'
import { ORDER } from './order.ts'

holdLaws(ORDER)
