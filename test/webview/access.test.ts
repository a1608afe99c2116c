import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { previewChange } from '../../server/src/features/preview-change.ts'
import { HOUSE } from '../features/house.ts'
import { previewOfText } from './pictures.ts'
import { openTheatre, type Stage, type StageOptions, type Theatre } from './stage.ts'
import { THEMES } from './themes.ts'

const AXE = readFileSync('node_modules/axe-core/axe.min.js', 'utf8')

/** With a rule that is not met, a hold, a room half read: everything that the strip can tell. */
const FULL = `${HOUSE.replace('2" narrowest rip', '5" narrowest rip')}hold moisture test, by A. Reader
room loft
  north 9'
  east 8'
`

const house = previewOfText(HOUSE)
const full = previewOfText(FULL)

let theatre: Theatre
beforeAll(async () => {
  theatre = await openTheatre()
})
afterAll(() => theatre.close())

async function shown(preview = house, options: StageOptions = {}): Promise<Stage> {
  const stage = await theatre.stage(options)
  await stage.say({ type: 'preview', change: previewChange(null, preview.picture) })
  await stage.page.waitForSelector('.piece')
  return stage
}

interface Found {
  readonly violations: readonly {
    readonly id: string
    readonly nodes: readonly { html: string }[]
  }[]
}

declare const axe: { run(): Promise<Found> }

describe.each(THEMES)('in $name', (theme) => {
  test('axe finds nothing, with everything open and a piece in focus', async () => {
    const { page, say, trouble } = await shown(full, { theme })
    await say({ type: 'notice', text: 'The drawing is that of before.' })
    for (const summary of await page.locator('summary').all()) await summary.click()
    await page.locator('.course > button').first().click()
    await page.locator('.plan').focus()
    await page.keyboard.press('ArrowRight')
    await page.evaluate(AXE)
    const { violations } = await page.evaluate(() => axe.run())
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([])
    expect(trouble()).toEqual([])
  })
})

describe('by keyboard alone', () => {
  test('from the counts to a piece, to its line, through the courses and out again', async () => {
    const { page, heard } = await shown()
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-id') ?? '')
    const name = () =>
      page.evaluate(
        () =>
          document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent,
      )
    const names: (string | null | undefined)[] = []
    for (let press = 0; press < 7; press++) {
      await page.keyboard.press('Tab')
      names.push(await name())
    }
    expect(names[0]).toMatch(/narrowest rip/)
    expect(names.slice(1)).toEqual([
      'Further',
      'Nearer',
      'Whole plan',
      'roomswalls and openingspieces',
      'Save drawing',
      'Drawing of the floor',
    ])

    await page.keyboard.press('ArrowRight')
    const laid = house.picture.courses.flatMap(({ pieces }) => pieces.map(({ id }) => id))
    expect(await focused()).toBe(laid[0])
    await page.keyboard.press('ArrowRight')
    expect(await focused()).toBe(laid[1])
    expect(await name()).toMatch(/^Piece \d+, course \d+, from plank \d+/)
    await page.keyboard.press('End')
    expect(await focused()).toBe(laid.at(-1))
    await page.keyboard.press('Home')
    await page.keyboard.press('Enter')
    expect((await heard()).at(-1)).toEqual({ type: 'go to', id: laid[0] })

    await page.keyboard.press('PageUp')
    expect(await focused()).toBe('opening den: den to hall')
    await page.keyboard.press('Enter')
    expect((await heard()).at(-1)).toEqual({ type: 'go to', id: await focused() })
    await page.keyboard.press('PageUp')
    expect(await focused()).toBe('room den')
    expect(await name()).toMatch(/^den: [\d.]+ sq ft$/)
    const over = await page.locator('select').inputValue()
    expect(over).toBe('rooms')

    await page.keyboard.press('Escape')
    expect(await name()).toBe('Drawing of the floor')
    await page.keyboard.press('Tab')
    expect(await name()).toBe('Courses in laying order')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    expect(await name()).toMatch(/^Course \d+ /)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.keyboard.press('ArrowDown')
    const second = house.picture.courses[1]!.pieces[0]!
    expect(await name()).toContain(second.size)
    await page.keyboard.press('Enter')
    expect((await heard()).at(-1)).toEqual({ type: 'go to', id: second.id })
    await page.keyboard.press('Tab')
    expect(await name()).toBe('How to read it')
    await page.keyboard.press('Shift+Tab')
    expect(await name()).toContain(second.size)
  })

  test('pan and zoom', async () => {
    const { page } = await shown()
    const scale = async () => {
      const transform = await page.locator('.world').getAttribute('transform')
      return /translate\((.*),(.*)\) scale\((.*)\)/.exec(transform!)!.slice(1).map(Number)
    }
    await page.locator('.plan').focus()
    const whole = await scale()
    await page.keyboard.press('+')
    expect((await scale())[2]).toBeGreaterThan(whole[2]!)
    await page.keyboard.press('-')
    await page.keyboard.press('-')
    expect((await scale())[2]).toBeLessThan(whole[2]!)
    await page.keyboard.press('0')
    expect(await scale()).toEqual(whole)
    await page.keyboard.press('Shift+ArrowLeft')
    expect((await scale())[0]).toBeCloseTo(whole[0]! + 60, 5)
  })

  test('what has the focus is seen to have it, and comes in sight', async () => {
    const { page } = await shown()
    await page.locator('.plan').focus()
    for (let press = 0; press < 9; press++) await page.keyboard.press('+')
    await page.keyboard.press('Home')
    await page.keyboard.press('End')
    const [box, plan] = [
      await page.locator('.marks .focused').boundingBox(),
      await page.locator('.plan').boundingBox(),
    ]
    expect(box!.x + box!.width).toBeGreaterThan(plan!.x)
    expect(box!.x).toBeLessThan(plan!.x + plan!.width)
    expect(box!.y + box!.height).toBeGreaterThan(plan!.y)
    expect(box!.y).toBeLessThan(plan!.y + plan!.height)
    await page.keyboard.press('Tab')
    expect(await page.locator('.marks .focused').count()).toBe(0)
  })

  test('focus stays on its piece through a change', async () => {
    const { page, say } = await shown()
    await page.locator('.plan').focus()
    await page.keyboard.press('Home')
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-id') ?? '')
    const id = await focused()
    const later = previewOfText(HOUSE.replace(`12' 4"`, `12' 4 1/8"`))
    await say({ type: 'preview', change: previewChange(house.picture, later.picture) })
    await page.waitForFunction(() => document.body.textContent?.includes(`12' 4 1/8"`))
    expect(await focused()).toBe(id)
    expect(await page.locator('.marks .focused').count()).toBe(1)
  })
})

describe('with little room, as at four times the size', () => {
  test('everything is there, in one column, and nothing is cut off', async () => {
    const { page } = await shown(full, { viewport: { width: 320, height: 256 } })
    for (const summary of await page.locator('summary').all()) await summary.click()
    await page.locator('.course > button').first().click()
    const { wide, cut } = await page.evaluate(() => ({
      wide: document.documentElement.scrollWidth,
      cut: [...document.querySelectorAll('h1, p, li, dt, dd, button, select, summary, .plan')]
        .filter((one) => !one.closest('.unseen') && one.getClientRects().length > 0)
        .filter((one) => {
          const { left, right } = one.getBoundingClientRect()
          return left < 0 || right > document.documentElement.clientWidth + 1
        })
        .map((one) => one.outerHTML.slice(0, 80)),
    }))
    expect(wide).toBeLessThanOrEqual(320)
    expect(cut).toEqual([])
    for (const part of [
      'h1',
      '.told',
      '.bar',
      '.plan',
      '.said',
      '.course-list',
      '.legend',
      '.keys',
    ]) {
      await page.locator(part).scrollIntoViewIfNeeded()
      expect([part, await page.locator(part).isVisible()]).toEqual([part, true])
    }
    const plan = (await page.locator('.plan').boundingBox())!
    expect(plan.height).toBeGreaterThanOrEqual(180)
  })

  test('the wheel moves the page on, and zooms with a key held', async () => {
    const { page } = await shown(house, { viewport: { width: 320, height: 256 } })
    const transform = () => page.locator('.world').getAttribute('transform')
    await page.locator('.plan').hover()
    const before = await transform()
    const top = await page.evaluate(() => scrollY)
    await page.mouse.wheel(0, 120)
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(top)
    expect(await transform()).toBe(before)
    await page.locator('.plan').hover()
    await page.keyboard.down('Control')
    await page.mouse.wheel(0, -120)
    await page.keyboard.up('Control')
    await expect.poll(transform).not.toBe(before)
  })
})

describe('for those who do not see it', () => {
  test('the drawing says its rooms, and counts are spoken once they are there', async () => {
    const { page, say } = await shown()
    const words = await page.locator('#words').textContent()
    expect(words).toMatch(/^Rooms: den: [\d.]+ sq ft; hall: [\d.]+ sq ft\. \d+ pieces are laid\./)
    const live = page.getByRole('status')
    const said = await live.textContent()
    expect(said).toMatch(/^ash: \d+ boxes$/)
    const counting = { ...house.picture, state: 'counting' as const }
    await say({ type: 'preview', change: previewChange(house.picture, counting) })
    await page.waitForSelector('body[data-state=counting]')
    expect(await live.textContent()).toBe(said)
  })
})

describe('motion', () => {
  test.each([
    ['reduce', '0s'],
    ['no-preference', '0.16s'],
  ] as const)('%s', async (reducedMotion, lasts) => {
    const { page } = await shown(house, { reducedMotion })
    await page.getByRole('button', { name: 'Nearer' }).click()
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .map((one) => getComputedStyle(one))
        .flatMap(({ transitionDuration, animationName }) => [
          ...(transitionDuration === '0s' ? [] : [transitionDuration]),
          ...(animationName === 'none' ? [] : [animationName]),
        ]),
    )
    expect(moving).toEqual(lasts === '0s' ? [] : [lasts])
  })
})
