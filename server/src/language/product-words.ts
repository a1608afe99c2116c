import { carried, line, plain, type Word } from './word.ts'

export const PRODUCT_WORDS: readonly Word[] = [
  line(
    'product',
    'plank',
    ['SIZE', 'LENGTH wide', 'LENGTH long', 'LENGTH thick'],
    'The face, width by length, and how thick it is.',
  ),
  line(
    'product',
    'box',
    ['COUNT planks', 'COUNT of LENGTH', 'NUMBER sq ft', 'NUMBER sq m'],
    'What is in a box; for planks of several lengths, how many of each.',
    { many: ['COUNT of LENGTH'] },
  ),
  line('product', 'pad', ['attached|separate|none'], 'Whether the pad is on the plank.'),
  line(
    'product',
    'joints',
    ['LENGTH stagger', 'LENGTH shortest end', 'LENGTH narrowest rip'],
    'The least distances between joints and to the walls.',
  ),
  line('product', 'gap', ['LENGTH'], 'The expansion gap at a wall.', { needs: ['LENGTH'] }),
  line(
    'product',
    'run',
    [
      'LENGTH long',
      'LENGTH wide',
      'through doorways',
      'breaks at doorways',
      'breaks at doorways under LENGTH',
    ],
    'The longest floor without a break, along and across the planks, and what doorways do to it.',
  ),
  line(
    'product',
    'laid',
    ['left to right|right to left|either way'],
    'Which way a course is laid: the hand of the lock.',
  ),
  line(
    'product',
    'cut',
    [
      'LENGTH kerf along',
      'LENGTH kerf across',
      'LENGTH kerf',
      'LENGTH to spare',
      'saw|score and snap|guillotine|knife',
    ],
    'How planks are cut, and what a cut takes: along for rips, across for lengths.',
  ),
  line('product', 'spoil', ['COUNT planks', 'PERCENT'], 'Planks that will be spoiled; at least 2.'),
  line('product', 'spares', ['COUNT planks', 'COUNT boxes|box'], 'What is left with the customer.'),
  ...carried('product'),
]

const PRICE_LINES = [
  'currency',
  'price',
  'labour',
  'markup',
  'margin',
  'tax',
  'date',
  'supplier',
  'discount',
  'deposit',
]

/** Price books are read and kept as they stand. */
export const PRICE_WORDS: readonly Word[] = [
  ...PRICE_LINES.map((word) => plain('prices', word, 'text', 'Read and kept as it stands.')),
  ...carried('prices'),
]
