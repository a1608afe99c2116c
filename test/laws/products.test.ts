import { holdLaws } from './hold.ts'
import { PRODUCTS } from './products.ts'

holdLaws(PRODUCTS)
