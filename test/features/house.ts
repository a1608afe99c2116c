/** Two rooms and a closet in one floor of one product, sound and complete: what many tests begin with. */
export const HOUSE = `floorscribe 1
job House
tape 1/16" + 1/32" per 10', about 1/2"
walls 4 1/2" thick
base 1/2" thick, kept
jambs 1/2" under
product ash
  plank       6" x 48", 3/16" thick
  box         12 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  run         60' long, 40' wide, through doorways
  laid        left to right
  cut         saw, 1/8" kerf, 1/4" to spare
  spoil       3 planks
  spares      2 planks
room den
  north       12' 4"
    door      30", 14" from left, to hall
  east        10' 8 1/4"
  south       12' 4 1/8"
    closet    4' 0", 3' 0" from left, 2' 0" deep
  west        10' 8 1/8"
  diagonal    16' 4", from north-west to south-east
room hall
  north       4' 0"
  east        9' 0"
  south       4' 0"
    door      30", 9" from right, to den
  west        9' 0"
floor ground
  rooms       den, den closet, hall
  lay         ash, running east-west
  start       along north of den
  shift       0" south
`
