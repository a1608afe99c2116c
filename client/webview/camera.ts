import { select } from 'd3-selection'
import { type D3ZoomEvent, type ZoomTransform, zoom, zoomIdentity } from 'd3-zoom'
import type { Sheet } from '../../server/src/features/preview-change.ts'
import type { Point } from '../../server/src/geometry/point.ts'

/** What of the world is seen: so many pixels to a millimetre, and where its origin lies. */
export interface Look {
  readonly k: number
  readonly x: number
  readonly y: number
}

const NM_PER_MM = 1_000_000

/** From half of what fits to the joint between two planks. */
const FURTHEST = 0.5
const NEAREST = 60
const STEP = 1.4

/** Pixels: where plain lettering is lower, the numbers of pieces are specks, and costly ones. */
const LEGIBLE = 6

/**
 * Pan, zoom and fit. Until someone pans or zooms the whole sheet is seen, whatever it grows to; from then
 * on nothing but a hand moves what is seen.
 */
export class Camera {
  private readonly root: SVGSVGElement
  private readonly world: SVGGElement
  private readonly changed: (look: Look | null) => void
  private readonly behaviour = zoom<SVGSVGElement, unknown>()
  private sheet: Sheet | null = null
  private fitted = true
  private look: Look = { k: 1, x: 0, y: 0 }

  /** `changed` is told what is seen once it stays, null where the whole sheet is fitted. */
  constructor(root: SVGSVGElement, world: SVGGElement, changed: (look: Look | null) => void) {
    this.root = root
    this.world = world
    this.changed = changed
    this.behaviour
      .filter((event: MouseEvent | WheelEvent) => this.isMeant(event))
      .clickDistance(4)
      .on('zoom', (event: D3ZoomEvent<SVGSVGElement, unknown>) => this.moved(event))
      .on('end', () => this.changed(this.fitted ? null : this.look))
    select(root).call(this.behaviour).on('dblclick.zoom', null)
    new ResizeObserver(() => this.resized()).observe(root)
  }

  show(sheet: Sheet): void {
    this.sheet = sheet
    this.resized()
  }

  /** What was seen when the page was last here. */
  restore({ k, x, y }: Look): void {
    this.fitted = false
    this.set(zoomIdentity.translate(x, y).scale(k), false)
  }

  fit(): void {
    this.fitted = true
    const whole = this.whole()
    if (whole !== null) this.set(whole, true)
    this.changed(null)
  }

  nearer(): void {
    this.scale(STEP)
  }

  further(): void {
    this.scale(1 / STEP)
  }

  pan(x: number, y: number): void {
    this.fitted = false
    this.world.classList.remove('glide')
    select(this.root).call(this.behaviour.translateBy, x / this.look.k, y / this.look.k)
  }

  /**
   * Moves as little as brings a part of the drawing in sight, and nothing where it is. A fitted sheet stays
   * fitted: all of it is seen, and it is to be fitted again as it grows.
   */
  reveal(part: SVGGraphicsElement): void {
    if (this.fitted) return
    const { clientWidth, clientHeight } = this.root
    const { k, x, y } = this.look
    const box = part.getBBox()
    const right = shift(box.x * k + x, (box.x + box.width) * k + x, clientWidth)
    const down = shift(box.y * k + y, (box.y + box.height) * k + y, clientHeight)
    if (right !== 0 || down !== 0) this.pan(right, down)
  }

  private scale(by: number): void {
    this.fitted = false
    this.world.classList.add('glide')
    select(this.root).call(this.behaviour.scaleBy, by)
  }

  /** In a moment where motion is welcome; the style sheet knows whether it is. */
  private set(transform: ZoomTransform, smooth: boolean): void {
    this.world.classList.toggle('glide', smooth)
    select(this.root).call(this.behaviour.transform, transform)
  }

  private moved({ transform, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>): void {
    if (sourceEvent !== null) {
      this.fitted = false
      this.world.classList.remove('glide')
    }
    this.look = { k: transform.k, x: transform.x, y: transform.y }
    this.world.setAttribute('transform', transform.toString())
    this.world.classList.toggle('far', ((this.sheet?.em ?? 0) / NM_PER_MM) * transform.k < LEGIBLE)
  }

  /** A wheel scrolls a page that is longer than its window; with a key held it zooms all the same. */
  private isMeant(event: MouseEvent | WheelEvent): boolean {
    if (event.type !== 'wheel') return event.button === 0
    const { scrollHeight, clientHeight } = document.documentElement
    return event.ctrlKey || event.metaKey || scrollHeight <= clientHeight + 1
  }

  private resized(): void {
    const whole = this.whole()
    if (whole === null) return
    this.behaviour.scaleExtent([whole.k * FURTHEST, whole.k * NEAREST])
    if (this.fitted) this.set(whole, false)
  }

  /** The whole sheet, in the middle; null while there is none, or no room for it. */
  private whole(): ZoomTransform | null {
    const { clientWidth: width, clientHeight: height } = this.root
    if (this.sheet === null || width === 0 || height === 0) return null
    const [low, high] = [inMm(this.sheet.low), inMm(this.sheet.high)]
    const k = Math.min(width / (high.x - low.x || 1), height / (high.y - low.y || 1))
    const [x, y] = [(low.x + high.x) / 2, (low.y + high.y) / 2]
    return zoomIdentity.translate(width / 2 - x * k, height / 2 + y * k).scale(k)
  }
}

function inMm({ x, y }: Point): Point {
  return { x: x / NM_PER_MM, y: y / NM_PER_MM }
}

/** How far a stretch is from lying in a window; one that is longer is brought in by its beginning. */
function shift(from: number, to: number, size: number): number {
  const margin = Math.min(24, size / 4)
  if (to > size - margin) return Math.max(size - margin - to, margin - from)
  return from < margin ? margin - from : 0
}
