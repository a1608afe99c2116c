import { describe, expect, it } from 'vitest'
import { bound, said } from './bound.ts'

const LARCH = `  plank       7" x 48 1/4", 3/16" thick
  box         9 planks
  joints      8" stagger, 10" shortest end
  gap         1/4"
`
/** A product, its lines changed by whole lines: `box 0 planks` takes the place of the box line. */
function product(...lines: readonly string[]): string {
  const words = lines.map((line) => line.split(' ')[0])
  const kept = LARCH.split('\n').filter((line) => !words.includes(line.trim().split(' ')[0]))
  const body = [
    ...kept.filter(Boolean),
    ...lines.filter((line) => line.includes(' ')).map((line) => `  ${line}`),
  ]
  return `floorscribe 1\nunits feet-inches\nproduct larch\n${body.join('\n')}\n`
}
const larch = (...lines: readonly string[]) => bound(product(...lines)).job.products[0]
const notes = (...lines: readonly string[]) => said(product(...lines), { notes: true })

describe('what only the product can tell', () => {
  it('is asked for, and never assumed', () => {
    expect(said(product('plank', 'box', 'joints', 'gap'))).toEqual([
      '3 incomplete product-unfinished: larch does not say yet how large a plank is, what a box holds, the stagger, the shortest end and the gap at a wall. Its maker does, and nobody should guess it: write as in plank 7" x 48"; box 9 planks; joints 8" stagger, 10" shortest end; gap 1/4".',
    ])
    expect(said(product('joints 8" stagger'))).toEqual([
      '3 incomplete product-unfinished: larch does not say yet the shortest end. Its maker does, and nobody should guess it: write as in joints 10" shortest end.',
    ])
    for (const lacks of ['plank', 'box', 'joints', 'gap']) expect(larch(lacks)).toBe(undefined)
  })

  it('holds nothing up in a product that no floor is laid with', () => {
    const floor = `room hall\nfloor one\n  rooms hall\n  lay oak, running east-west\nproduct oak\n${LARCH}`
    expect(said(product('joints', 'gap') + floor)).toEqual([])
    expect(said(product('joints', 'gap') + floor, { notes: true })[0]).toContain(
      '3 note product-unfinished',
    )
  })

  it('is not asked for while a line of it cannot be read', () => {
    expect(said(product('gap 1/3"'))).toEqual([])
  })

  it('is asked for where its line does not say it yet', () => {
    const face =
      '7 incomplete product-unfinished: How wide is the plank? Write its face as 7" x 48", or 7" wide where the box lists the lengths.'
    const box =
      '7 incomplete product-unfinished: How many planks does a box hold? Write box 9 planks, or what it prints: box 23.64 sq ft.'
    expect(said(product('plank 3/16" thick'))).toEqual([face])
    expect(said(product('plank ? wide'))).toEqual([face])
    expect(said(product('box ? planks'))).toEqual([box])
    expect(said(product('box 2 of 48 1/4", ? of 36"'))).toEqual([box])
    expect(larch('plank 7" wide, 48" long')).toMatchObject({ width: 177_800_000, thickness: null })
  })
})

describe('common practice where the product is silent', () => {
  it('is said in one note', () => {
    expect(notes()).toEqual([
      '3 note product-defaults: Not said for larch, so taken from common practice: no rip narrower than 2"; 1/8" for a cut by a saw; 1/4" to spare on a plank that gives an end and a start; laid left to right; run through doorways; 2 planks of spoil.',
    ])
    expect(larch()).toMatchObject({
      rules: {
        narrowestRip: { value: 50_800_000, span: null },
        kerfAlong: { value: 3_175_000, span: null },
        kerfAcross: { value: 3_175_000, span: null },
        toSpare: { value: 6_350_000, span: null },
        laid: 'left to right',
        doorways: 'through',
        longestRun: { along: null, across: null },
      },
      spoil: { planks: 2, percent: null, span: null },
      spares: { planks: 0, boxes: 0 },
      pad: null,
    })
  })

  it('is silent where all is said', () => {
    const all = [
      'joints 8" stagger, 10" shortest end, 2" narrowest rip',
      'cut 1/8" kerf along, 0" kerf across, 1/4" to spare',
      'laid either way',
      'run breaks at doorways under 3\' 0"',
      'spoil 3 planks, 2%',
      'spares 1 box, 4 planks',
      'pad none',
    ]
    expect(notes(...all)).toEqual([])
    expect(larch(...all)).toMatchObject({
      rules: {
        kerfAlong: { value: 3_175_000 },
        kerfAcross: { value: 0 },
        laid: 'either way',
        doorways: { breakUnder: 914_400_000 },
      },
      spoil: { planks: 3, percent: { n: 2n, d: 1n } },
      spares: { planks: 4, boxes: 1 },
      pad: 'none',
    })
  })

  // Kerfs by the way of cutting: common practice, no source.
  it.each([
    ['saw', 3_175_000, 3_175_000, '1/8" for a cut by saw'],
    ['score and snap', 0, 0, '0" for a cut by score and snap'],
    ['guillotine', 3_175_000, 0, '1/8" for a rip and 0" for a cross cut by guillotine'],
    ['knife', 0, 0, '0" for a cut by knife'],
  ])('cut %s', (way, along, across, note) => {
    expect(larch(`cut ${way}`)!.rules).toMatchObject({
      kerfAlong: { value: along },
      kerfAcross: { value: across },
    })
    expect(notes(`cut ${way}`)[0]).toContain(note)
  })

  it('the kerf that the line measures stands before the way of cutting', () => {
    expect(larch('cut guillotine, 3/32" kerf along')!.rules).toMatchObject({
      kerfAlong: { value: 2_381_250 },
      kerfAcross: { value: 0 },
    })
    expect(larch('cut 1/16" kerf')!.rules.kerfAcross.value).toBe(1_587_500)
  })

  it('a floor is hardly laid with fewer than 2 planks spoiled (common practice, no source)', () => {
    expect(notes('spoil 1 planks')[1]).toBe(
      '8 note spoil-raised: 1 plank of spoil is taken as 2: hardly a floor is laid with less (common practice).',
    )
    expect(larch('spoil 0 planks')!.spoil.planks).toBe(2)
    expect(larch('spoil 5%')!.spoil).toMatchObject({ planks: null, percent: { n: 5n, d: 1n } })
  })

  it('run through doorways, or broken at each', () => {
    expect(larch('run through doorways')!.rules.doorways).toBe('through')
    expect(larch("run breaks at doorways, 60' long")!.rules).toMatchObject({
      doorways: 'break',
      longestRun: { along: 18_288_000_000, across: null },
    })
  })
})

describe('a box that prints its area', () => {
  it.each([
    // 23.64 sq ft of 7 x 48 1/4 in planks: 10.079 of them. Computed: 23.64 x 144 / 337.75.
    ['plank 7" x 48 1/4"', 'box 23.64 sq ft', 10],
    // 180 x 1220 mm, 8 planks are 1.7568 m2 = 18.910037820 sq ft (trade values, computed).
    ['plank 180 mm x 1220 mm', 'box 1.757 sq m', 8],
    ['plank 180 mm x 1220 mm', 'box 18.91 sq ft', 8],
    // On the limit of 2 %: 10.2 sq ft of planks of 1 sq ft.
    ["plank 1' x 1'", 'box 10.2 sq ft', 10],
  ])('%s, %s', (plank, box, planks) => {
    expect(larch(plank, box)).toMatchObject({ perBox: planks })
  })

  it('is said, for printed areas are rounded', () => {
    expect(notes('box 23.64 sq ft')[1]).toBe(
      '7 note box-by-area: 23.64 sq ft is taken as 10 planks a box: the area printed on a box is rounded, the planks are counted.',
    )
  })

  it.each([
    ["plank 1' x 1'", 'box 10.21 sq ft', '10.21 sq ft is 10.21 planks of this size'],
    ['plank 7" x 48 1/4"', 'box 22.5 sq ft', '22.5 sq ft is 9.59 planks of this size'],
    ['plank 7" x 48 1/4"', 'box 1000000 sq ft', '1000000 sq ft is 426350.85 planks of this size'],
  ])('that is no whole number of planks: %s, %s', (plank, box, text) => {
    expect(said(product(plank, box))).toEqual([
      `7 error box-area-not-whole: ${text}, and a box holds whole planks. Check the area and the plank, or write the count, such as 9 planks.`,
    ])
  })

  it('must agree with the count beside it', () => {
    expect(said(product('box 9 planks, 21.1 sq ft'))).toEqual([])
    expect(said(product('box 9 planks, 23.64 sq ft'))).toEqual([
      '7 error box-said-twice: The area on this box is that of 10 planks, but the line says 9. Keep the one that is right.',
    ])
  })
})

describe('planks of several lengths', () => {
  it('are listed in the box', () => {
    expect(larch('plank 5" wide', 'box 2 of 24", 4 of 36"')).toMatchObject({
      lengths: [
        { length: 609_600_000, perBox: 2 },
        { length: 914_400_000, perBox: 4 },
      ],
      perBox: 6,
    })
  })

  it.each([
    [
      'plank 5" wide',
      'box 9 planks',
      'box-without-lengths: The planks have no one length, so the box says how many it holds of each, such as 2 of 24", 4 of 36", 5 of 48".',
    ],
    [
      'plank 5" wide',
      'box 0 of 24"',
      'box-of-nothing: A box holds one plank at least of each length that it lists, longer than nothing.',
    ],
    [
      'plank 5" wide',
      'box 2 of 24", 3 of 2\' 0"',
      'box-length-twice: This box lists one length twice. Add the two up.',
    ],
    [
      'plank 5" x 48"',
      'box 2 of 24", 3 of 36"',
      'box-without-its-length: The plank line says 4\' 0" long, which is none of the lengths in this box. Leave the length out there, as in: plank 5" wide.',
    ],
    [
      'plank 5" wide',
      "box 2 of 24'",
      'plank-size-unlikely: A plank 24\' 0" long? Up to 20\' 0" is read. Check the mark.',
    ],
  ])('%s, %s', (plank, box, text) => {
    expect(said(product(plank, box))).toEqual([`7 error ${text}`])
  })
})

describe('sizes that are none', () => {
  it.each([
    [
      'plank 0" x 48"',
      '7 error size-of-nothing: 0" x 48" is no size for this plank. Its width and length stand on the box.',
    ],
    [
      'plank 7" x 21\'',
      '7 error plank-size-unlikely: A plank 21\' 0" long? Up to 20\' 0" is read. Check the mark.',
    ],
    [
      "plank 7' x 48'",
      '7 error plank-size-unlikely: A plank 7\' 0" wide? Up to 4\' 0" is read. Check the mark.',
    ],
    [
      'plank 48" x 7"',
      '7 error plank-size-unlikely: A plank 4\' 0" wide and 7" long? The width comes first, and no plank is shorter than it is wide.',
    ],
    ['box 0 planks', '7 error box-of-nothing: A box holds one plank at least.'],
    [
      'box 9999999 planks',
      '7 error count-too-high: 9999999 is more than any job holds. Write 1000000 at most.',
    ],
    [
      'spoil 101%',
      '8 error percent-too-high: Spoil of 101% is more than the floor itself. Write 100% at most.',
    ],
  ])('%s', (line, text) => {
    expect(said(product(line))[0]).toBe(text)
  })

  it('100 % of spoil is allowed', () => {
    expect(said(product('spoil 100%'))).toEqual([])
  })
})

it('a line said twice', () => {
  expect(said(`${product()}  gap 3/8"\n`)).toEqual([
    '8 error line-twice: There is a gap line already, on line 7. Keep one of the two.',
  ])
})
