/** An old room out of square with every kind of doubt, a hall with a slant, and much left open. */
export const PARLOUR = `floorscribe 1
job Old parlour
  hold        slab test, by the mason, on sheet 4
  hold        rug choice, cleared 2027-04-12
tape 1/16" + 1/32" per 10', about 1/2"
walls 4 1/2" thick
base 5/8" thick, off and back
room parlour
  tape        1/8", touching base
  out of square
  north       14' 3 1/2" within 1/4"
  east        12' 3 7/8", called window wall, 1/2" gap
    again     12' 4"
  south       about 14' 7 1/4", tub
    note      radiator: the last 4" guessed
  west        12' 0 1/4"
    door      34"?, 1' 11" from right, to hall, sliding
    hearth    2' 0", 1' 0" from left, 1' 0" deep
  diagonal    18' 11 3/8", from north-west to south-east
  diagonal    18' 10 1/4"?, from north-east to south-west
  across      12' 2 1/8", from north to south, middle, touching wall
  column      8" round, 4' 0" from west, 3' 0" from north, called post
  accept      check disagrees, because old
room hall
  north       8' 0"
  east        6' 0", open to outside
  slant       4' 3", 3' 0" west, 3' 0" south
  south       5' 0", stair down
  west        9' 0", 2" bow in
  corner      nook
  tie         5' 0", 3' 0" along north, 4' 0" along east
  square      north-east
product oak board
  plank       5" wide, 9/16" thick
  box         2 of 24", 4 of 36", 5 of 48"
  joints      10" stagger, 12" shortest end
  gap         1/2"
floor ground
  rooms       parlour
  lay         oak board, running along window wall of parlour
  edge        parlour to hall, with end cap
  expect      99 planks, within 5%
  hold        oak choice
prices list
  price       oak board, 4.10 per sq ft
`
