import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { Resvg } from '@resvg/resvg-js'

/** The icon as shops of extensions want it: `node client/build/icon.ts` draws it anew from the SVG. */
const MEDIA = join(import.meta.dirname, '../media')
const WIDTH_PX = 128

const svg = readFileSync(join(MEDIA, 'icon.svg'), 'utf8')
const drawn = new Resvg(svg, { fitTo: { mode: 'width', value: WIDTH_PX } }).render()
writeFileSync(join(MEDIA, 'icon.png'), drawn.asPng())
