/** So many rooms that nothing ties, each a floor of its own of about fifty pieces. */
export function manyPieces(rooms: number): string {
  return [HEAD, ...Array.from({ length: rooms }, (_, i) => roomText(i + 1))].join('\n')
}

/** The same with one room a little less deep: its pieces are others, no other room moves. */
export function oneRoomChanged(text: string, room: number): string {
  const from = text.indexOf(`room room ${room}\n`)
  const to = text.indexOf('\nfloor', from)
  return text.slice(0, from) + text.slice(from, to).replaceAll(`8' 0"`, `7' 10"`) + text.slice(to)
}

const HEAD = `floorscribe 1
job Mill Street
units feet-inches
walls 4 1/2" thick
base 1/2" thick, kept
product ash
  plank       6" x 48", 3/16" thick
  box         12 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
`

function roomText(room: number): string {
  return `room room ${room}
  north       10' 0"
  east        8' 0"
  south       10' 0"
  west        8' 0"
floor floor ${room}
  rooms       room ${room}
  lay         ash, running east-west
`
}
