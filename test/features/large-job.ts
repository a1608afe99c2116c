/** A job of many small rooms, about so many lines long; with `floors` each room is laid on its own. */
export function largeJob(lines: number, { floors = false } = {}): string {
  const parts = [HEAD]
  const perRoom = floors ? 14 : 10
  for (let room = 1; room * perRoom < lines; room++) {
    parts.push(roomText(room))
    if (floors) parts.push(floorText(room))
  }
  return parts.join('\n')
}

const HEAD = `floorscribe 1
job Street
walls 4 1/2" thick
product ash
  plank       6" x 48"
  box         12 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
`

function roomText(room: number): string {
  return `room den ${room}
  north       5' 0", called window ${room}
    door      30", 1' 0" from left, to outside
    note      the sill is loose
  east        4' 0 1/8"
  south       5' 0 1/8"
  west        4' 0"
  diagonal    6' 4 7/8", from north-west to south-east
  across      4' 0", from window ${room} to south, middle
`
}

function floorText(room: number): string {
  return `floor ${room} den
  rooms       den ${room}
  lay         ash, running east-west
`
}
