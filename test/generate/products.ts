/** A product as text, and what is special about it. */
export interface Product {
  readonly name: string
  readonly feature: string
  readonly text: string
}

export const PRODUCTS: readonly Product[] = [
  {
    name: 'reed click',
    feature: 'one length, floating',
    text: `product reed click
  plank       7" x 48", 3/16" thick
  box         9 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  run         60' long, 40' wide
  laid        left to right
  cut         0" kerf across, 1/16" kerf along
`,
  },
  {
    name: 'broad heath',
    feature: 'wide and long, sawn',
    text: `product broad heath
  plank       9" x 60", 1/2" thick
  box         5 planks
  pad         separate
  joints      12" stagger, 12" shortest end, 2" narrowest rip
  gap         3/8"
  run         30' long, 20' wide
  laid        right to left
  cut         saw, 1/8" kerf
`,
  },
  {
    name: 'strip alder',
    feature: 'three lengths',
    text: `product strip alder
  plank       5" wide, 9/16" thick
  box         2 of 24", 4 of 36", 5 of 48"
  pad         separate
  joints      10" stagger, 12" shortest end, 2" narrowest rip
  gap         1/2"
  run         45' long, 24' wide
  laid        left to right
  cut         3/32" kerf
`,
  },
  {
    name: 'even moss',
    feature: 'symmetric lock',
    text: `product even moss
  plank       5 3/8" x 47 5/8", 1/4" thick
  box         12 planks
  pad         attached
  joints      6" stagger, 8" shortest end, 1 1/2" narrowest rip
  gap         1/4"
  run         40' long, 40' wide
  laid        either way
  cut         1/16" kerf
`,
  },
]
