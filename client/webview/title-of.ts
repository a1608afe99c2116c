import type { Shape } from '../../server/src/report/scene.ts'

/** What a shape says of itself; nothing for what is only drawn. */
export function titleOf(shape: Shape): string {
  if ('title' in shape) return shape.title
  switch (shape.kind) {
    case 'label':
      return shape.lines.map(({ text }) => text).join(', ')
    case 'dimension':
    case 'rip label':
      return shape.lettering.text
    case 'working line':
      return 'Working line: snap this first'
    default:
      return ''
  }
}
