import type { Box } from './ring.ts'

/** Boxes in a tree, to find those that touch a place. */
export interface BoxTree {
  /** Calls back with the place in the list of each box that meets or touches this one. */
  touching(box: Box, visit: (index: number) => void): void
}

interface Node {
  readonly box: Box
  readonly below: readonly Node[]
  /** Place in the list for a leaf, −1 for any other node. */
  readonly index: number
}

/** Boxes or nodes under one node. */
const FAN = 8

/**
 * Packs boxes that are all known at once: into upright slices by their middles, each slice from low to
 * high, so many under one node, and the nodes again until one is left (S. Leutenegger, M. Lopez and
 * J. Edgington, STR: A simple and efficient algorithm for R-tree packing, ICDE 1997). Long thin boxes
 * beside each other, which crowd the cells of a grid, come to lie under nodes as thin. n log n.
 */
export function boxTree(boxes: readonly Box[]): BoxTree {
  let nodes: Node[] = boxes.map((box, index) => ({ box, below: [], index }))
  while (nodes.length > 1) nodes = packed(nodes)
  const [root] = nodes
  return { touching: (box, visit) => root && look(root, box, visit) }
}

function look({ box, below, index }: Node, at: Box, visit: (index: number) => void): void {
  if (!touches(box, at)) return
  if (index >= 0) visit(index)
  for (const node of below) look(node, at, visit)
}

function packed(nodes: readonly Node[]): Node[] {
  const groups = Math.ceil(nodes.length / FAN)
  const inSlice = Math.ceil(Math.sqrt(groups)) * FAN
  const byX = [...nodes].sort((a, b) => a.box.west + a.box.east - b.box.west - b.box.east)
  return inParts(byX, inSlice).flatMap((slice) => {
    slice.sort((a, b) => a.box.south + a.box.north - b.box.south - b.box.north)
    return inParts(slice, FAN).map((below) => ({ box: around(below), below, index: -1 }))
  })
}

function inParts(nodes: readonly Node[], size: number): Node[][] {
  const parts: Node[][] = []
  for (let i = 0; i < nodes.length; i += size) parts.push(nodes.slice(i, i + size))
  return parts
}

function around(nodes: readonly Node[]): Box {
  return nodes
    .map(({ box }) => box)
    .reduce((a, b) => ({
      west: Math.min(a.west, b.west),
      south: Math.min(a.south, b.south),
      east: Math.max(a.east, b.east),
      north: Math.max(a.north, b.north),
    }))
}

function touches(a: Box, b: Box): boolean {
  return a.west <= b.east && b.west <= a.east && a.south <= b.north && b.south <= a.north
}
