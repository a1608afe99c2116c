import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { nextTo } from '../../client/webview/walk.ts'
import { previewOf } from '../../server/src/features/preview.ts'
import { previewChange } from '../../server/src/features/preview-change.ts'
import { HOUSE } from '../features/house.ts'
import { previewOfText, viewOf } from './pictures.ts'
import { openTheatre, type Stage, type StageOptions, type Theatre } from './stage.ts'

const house = previewOfText(HOUSE)
const LONGER = HOUSE.replace(`12' 4"`, `12' 4 1/8"`)

let theatre: Theatre
beforeAll(async () => {
  theatre = await openTheatre()
})
afterAll(() => theatre.close())

/** The page with the house drawn on it. */
async function shown(options: StageOptions = {}): Promise<Stage> {
  const stage = await theatre.stage(options)
  await stage.say({ type: 'preview', change: previewChange(null, house.picture) })
  await stage.page.waitForSelector('.piece')
  return stage
}

const transformOf = ({ page }: Stage) => page.locator('.world').getAttribute('transform')

/** Clicks on a line a little from where it begins: a level one has no height that could be clicked on. */
async function clickAlong({ page }: Stage, line: string): Promise<void> {
  const { x, y } = await page.locator(line).evaluate((element) => {
    const path = element as SVGPathElement
    const at = path.getPointAtLength(path.getTotalLength() / 5)
    const { x, y } = at.matrixTransform(path.getScreenCTM()!)
    return { x, y }
  })
  await page.mouse.click(x, y)
}

describe('the page draws what it is sent', () => {
  test('every shape, in its order, and the counts over it', async () => {
    const { page, heard, trouble } = await shown()
    const ids = await page
      .locator('.world > g:not(.marks) > [data-id]')
      .evaluateAll((all) => all.map((one) => one.getAttribute('data-id')))
    expect(ids).toEqual(house.picture.scene.shapes.map(({ id }) => id))
    expect(await page.locator('.told').textContent()).toMatch(/ash\s+\d+ boxes/)
    expect(await page.locator('h1').textContent()).toBe('House')
    expect(await heard()).toEqual([{ type: 'ready' }])
    expect(trouble()).toEqual([])
  })

  test('a change touches what it names and nothing else', async () => {
    const stage = await shown()
    const { page } = stage
    await page.evaluate(() => {
      for (const one of document.querySelectorAll('[data-id]')) Object.assign(one, { before: true })
    })
    const later = previewOf(viewOf(LONGER), house)
    const change = previewChange(house.picture, later.picture)
    await stage.say({ type: 'preview', change })
    await page.waitForFunction(() =>
      document.querySelector('[data-id="den: wall 0"] title')?.textContent?.includes('1/8'),
    )
    const kept = await page.evaluate(() =>
      [...document.querySelectorAll('.world > g:not(.marks) > [data-id]')].map((one) => [
        one.getAttribute('data-id'),
        'before' in one,
      ]),
    )
    const ids = later.picture.scene.shapes.map(({ id }) => id)
    expect(kept.map(([id]) => id)).toEqual(ids)
    const known = new Set(house.picture.scene.shapes.map(({ id }) => id))
    for (const [id, before] of kept) expect([id, before]).toEqual([id, known.has(`${id}`)])
  })

  test('after any row of changes the page is as if it were drawn at once', async () => {
    const texts = [
      LONGER,
      HOUSE.replace('east-west', 'north-south'),
      HOUSE.replace(`12' 4"`, `12' 4/`),
      HOUSE.replace(`9' 0"`, '?'),
      `${HOUSE}room loft\n  north 9'\n`,
      HOUSE,
    ]
    const [patched, fresh] = [await shown(), await theatre.stage()]
    let before = house
    for (const text of texts) {
      const after = previewOf(viewOf(text), before)
      await patched.say({ type: 'preview', change: previewChange(before.picture, after.picture) })
      await fresh.say({ type: 'preview', change: previewChange(null, after.picture) })
      before = after
      await fresh.page.waitForFunction(
        (count) => document.querySelectorAll('.world > g:not(.marks) > [data-id]').length === count,
        after.picture.scene.shapes.length,
      )
      await fresh.page.evaluate(() => new Promise((done) => requestAnimationFrame(done)))
      const html = ({ page }: Stage) =>
        page.evaluate(() =>
          ['.world', '.told', '.course-list', '.state']
            .map((part) => document.querySelector(part)?.outerHTML)
            .join('\n'),
        )
      expect(await html(patched)).toBe(await html(fresh))
    }
  })

  test('a part of a picture that it does not have makes it ask for the whole', async () => {
    const stage = await theatre.stage()
    await stage.say({ type: 'preview', change: previewChange(house.picture, house.picture) })
    await expect.poll(() => stage.heard()).toEqual([{ type: 'ready' }, { type: 'ready' }])
  })

  test('until the first picture came nothing is said of the job', async () => {
    const stage = await theatre.stage()
    const state = stage.page.locator('.state')
    expect(await state.textContent()).toBe('Reading the job')
    const bare = previewOfText('job Bare\n')
    await stage.say({ type: 'preview', change: previewChange(null, bare.picture) })
    await expect.poll(() => state.textContent()).toBe('No floor to lay yet')
    await stage.say({ type: 'preview', change: previewChange(bare.picture, house.picture) })
    await expect.poll(() => state.textContent()).toBe('')
  })

  test('what is old, counting or not final says so', async () => {
    const stage = await shown()
    const say = async (state: 'old' | 'counting' | 'open') => {
      await stage.say({
        type: 'preview',
        change: previewChange(house.picture, { ...house.picture, state }),
      })
      await stage.page.waitForSelector(`body[data-state=${state}]`)
      return stage.page.locator('.state').textContent()
    }
    expect(await say('old')).toMatch(/^Old drawing/)
    expect(await say('counting')).toMatch(/^Counting/)
    expect(await say('open')).toBe('Not final')
  })

  test('a notice is said until it is taken back', async () => {
    const stage = await shown()
    const notice = stage.page.locator('.notice')
    expect(await notice.isVisible()).toBe(false)
    await stage.say({ type: 'notice', text: 'The drawing is that of before.' })
    await expect.poll(() => notice.isVisible()).toBe(true)
    expect(await notice.textContent()).toBe('The drawing is that of before.')
    await stage.say({ type: 'notice', text: '' })
    await expect.poll(() => notice.isVisible()).toBe(false)
  })
})

describe('pan and zoom', () => {
  test('survive redraws; the whole is seen until someone zooms', async () => {
    const stage = await shown()
    const { page } = stage
    const fitted = await transformOf(stage)
    await page.locator('.plan').hover()
    await page.mouse.wheel(0, -400)
    await expect.poll(() => transformOf(stage)).not.toBe(fitted)
    const near = await transformOf(stage)
    const wide = previewOfText(
      HOUSE.replace(`12' 4"`, `22' 4"`).replace(`12' 4 1/8"`, `22' 4 1/8"`),
    )
    await stage.say({ type: 'preview', change: previewChange(house.picture, wide.picture) })
    await expect.poll(() => page.locator('[data-id="room den"] title').count()).toBe(0)
    await page.waitForFunction(() => document.body.textContent?.includes(`22' 4"`))
    expect(await transformOf(stage)).toBe(near)
    await page.getByRole('button', { name: 'Whole plan' }).click()
    await expect.poll(() => transformOf(stage)).not.toBe(near)
    const whole = await transformOf(stage)
    await stage.say({ type: 'preview', change: previewChange(wide.picture, house.picture) })
    await expect.poll(() => transformOf(stage)).toBe(fitted)
    expect(whole).not.toBe(fitted)
  })

  test('a room turned about under the cursor is seen whole again', async () => {
    const walls = [`north 9'`, `east 4'`, `south 3'`, `east 4'`, `south 6'`, `west 8'`]
    const room = (lines: readonly string[]) =>
      previewOfText(`job Den\nroom den\n${lines.map((line) => `  ${line}\n`).join('')}`)
    const [backwards, forwards] = [room(walls.toReversed()), room(walls)]
    const { low, high } = forwards.picture.scene
    expect([low, high]).not.toEqual([backwards.picture.scene.low, backwards.picture.scene.high])
    const small = { viewport: { width: 420, height: 420 } }
    const [stage, fresh] = [await theatre.stage(small), await theatre.stage(small)]
    await stage.page.evaluate(() => {
      document.hasFocus = () => false
    })
    await stage.say({ type: 'preview', change: previewChange(null, backwards.picture) })
    for (const { id } of backwards.picture.scene.shapes.filter(({ kind }) => /wall/.test(kind)))
      await stage.say({ type: 'cursor', ids: [id] })
    await expect.poll(() => stage.page.locator('.marks .lit').count()).toBe(1)
    await stage.say({
      type: 'preview',
      change: previewChange(backwards.picture, forwards.picture),
    })
    await fresh.say({ type: 'preview', change: previewChange(null, forwards.picture) })
    await expect.poll(() => transformOf(fresh)).toContain('scale')
    const whole = await transformOf(fresh)
    await expect.poll(() => transformOf(stage)).toBe(whole)
  })

  test('are kept while the page is hidden, and nothing else is believed', async () => {
    const kept = await shown({ kept: { job: 'House', look: { k: 0.3, x: 10, y: 20 } } })
    expect(await transformOf(kept)).toBe('translate(10,20) scale(0.3)')
    for (const odd of [
      { job: 'House', look: { k: '0.3', x: 10, y: 20 } },
      { job: 'Another', look: { k: 0.3, x: 10, y: 20 } },
      'House',
    ])
      expect(await transformOf(await shown({ kept: odd }))).not.toContain('translate(10,')
  })

  test('another job is seen whole', async () => {
    const stage = await shown()
    const fitted = await transformOf(stage)
    await stage.page.getByRole('button', { name: 'Nearer' }).click()
    const title = 'Another'
    const other = { ...house.picture, scene: { ...house.picture.scene, title } }
    await stage.say({ type: 'preview', change: previewChange(null, other) })
    await expect.poll(() => stage.page.locator('h1').textContent()).toBe(title)
    expect(await transformOf(stage)).toBe(fitted)
  })
})

describe('from the drawing to the text and back', () => {
  test('a click on a piece, a wall or an opening says which', async () => {
    const stage = await shown()
    await stage.page.locator('[data-id="ground: piece 20"] path').click()
    await clickAlong(stage, '[data-id="den: wall 0"] .felt')
    await stage.page.locator('[data-id="opening den: den to hall"] path').first().click()
    expect((await stage.heard()).slice(1)).toEqual([
      { type: 'go to', id: 'ground: piece 20' },
      { type: 'go to', id: 'den: wall 0' },
      { type: 'go to', id: 'opening den: den to hall' },
    ])
  })

  test('the arrow keys go on from what was clicked, over others of its kind', async () => {
    const stage = await shown()
    const { page } = stage
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-id'))
    await page.locator('.plan').focus()
    await page.keyboard.press('Home')
    await page.locator('[data-id="ground: piece 20"] path').click()
    expect(await focused()).toBe('ground: piece 20')
    expect(await page.locator('.marks .focused.piece').count()).toBe(1)
    const pieces = house.picture.scene.shapes.filter(({ kind }) => kind === 'piece')
    const clicked = pieces.find(({ id }) => id === 'ground: piece 20')!
    await page.keyboard.press('ArrowDown')
    expect(await focused()).toBe(nextTo(clicked, 'ArrowDown', pieces)!.id)
    await clickAlong(stage, '[data-id="den: wall 0"] .felt')
    expect(await page.locator('select').inputValue()).toBe('walls')
    await page.keyboard.press('Enter')
    const { length } = await stage.heard()
    expect((await stage.heard()).slice(length - 2)).toEqual([
      { type: 'go to', id: 'den: wall 0' },
      { type: 'go to', id: 'den: wall 0' },
    ])
  })

  test('a click on what is half out of sight moves nothing', async () => {
    const stage = await shown({ reducedMotion: 'reduce' })
    const { page } = stage
    await page.locator('.plan').focus()
    for (let press = 0; press < 4; press++) await page.keyboard.press('+')
    const near = await transformOf(stage)
    const cut = await page.evaluate(() => {
      const { left, top, height } = document.querySelector('.plan')!.getBoundingClientRect()
      const points = Array.from({ length: height - 1 }, (_, down) => ({
        x: left + 3,
        y: top + down,
      }))
      return points.find(({ x, y }) => document.elementFromPoint(x, y)?.closest('.piece'))
    })
    await page.mouse.click(cut!.x, cut!.y + 3)
    expect((await stage.heard()).at(-1)).toMatchObject({ type: 'go to' })
    expect(await page.locator('.marks .focused').count()).toBe(1)
    expect(await transformOf(stage)).toBe(near)
  })

  test('a drag is no click', async () => {
    const stage = await shown()
    const box = (await stage.page.locator('.plan').boundingBox())!
    await stage.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await stage.page.mouse.down()
    await stage.page.mouse.move(box.x + box.width / 2 + 80, box.y + box.height / 2, { steps: 4 })
    await stage.page.mouse.up()
    expect(await stage.heard()).toEqual([{ type: 'ready' }])
  })

  test("the cursor's shapes light up, the focus stays where it was", async () => {
    const stage = await shown()
    const focused = () => stage.page.evaluate(() => document.activeElement?.tagName)
    expect(await focused()).toBe('BODY')
    await stage.say({ type: 'cursor', ids: ['den: wall 0', 'no such shape'] })
    await expect.poll(() => stage.page.locator('.marks .lit').count()).toBe(1)
    expect(await stage.page.locator('.marks .lit.wall-face').count()).toBe(1)
    await stage.say({ type: 'cursor', ids: [] })
    await expect.poll(() => stage.page.locator('.marks .lit').count()).toBe(0)
    expect(await focused()).toBe('BODY')
  })

  test('the drawing follows the cursor only while the text has the focus', async () => {
    const stage = await shown()
    await stage.page.locator('.plan').focus()
    for (let press = 0; press < 8; press++) await stage.page.keyboard.press('+')
    const near = await transformOf(stage)
    const lit = async (id: string) => {
      await stage.say({ type: 'cursor', ids: [id] })
      await expect.poll(() => stage.page.locator('.marks .lit').count()).toBe(1)
    }
    await lit('den: wall 0')
    expect(await transformOf(stage)).toBe(near)
    await stage.page.evaluate(() => {
      document.hasFocus = () => false
    })
    await lit('den: wall 0')
    await expect.poll(() => transformOf(stage)).not.toBe(near)
  })

  test('a lit shape stays lit, and where it is now, after a change', async () => {
    const stage = await shown()
    await stage.say({ type: 'cursor', ids: ['den: wall 0'] })
    await stage.say({
      type: 'preview',
      change: previewChange(house.picture, previewOfText(LONGER).picture),
    })
    const mark = stage.page.locator('.marks .lit path')
    const wall = stage.page.locator('[data-id="den: wall 0"] path:not(.felt)')
    await stage.page.waitForFunction(() => document.body.textContent?.includes(`12' 4 1/8"`))
    await expect.poll(() => mark.count()).toBe(1)
    expect(await mark.getAttribute('d')).toBe(await wall.getAttribute('d'))
  })

  test('pointing at a piece tells its size, plank and where its offcut goes', async () => {
    const stage = await shown()
    const pieces = house.picture.courses.flatMap((course) => course.pieces)
    const { id, size, plank, offcut } = pieces.find((one) => /is for/.test(one.offcut))!
    await stage.page.locator(`[data-id="${id}"] path`).hover()
    const said = await stage.page.locator('.said').textContent()
    for (const part of [size, `from plank ${plank}`, offcut]) expect(said).toContain(part)
    const kin = pieces.filter((one) => one.plank === plank && one.id !== id)
    expect(await stage.page.locator('.marks .kin').count()).toBe(kin.length)
    await stage.page.locator('h1').hover()
    await expect.poll(() => stage.page.locator('.marks .kin').count()).toBe(0)
  })

  test('the drawing is asked for as a file', async () => {
    const stage = await shown()
    await stage.page.getByRole('button', { name: 'Save drawing' }).click()
    expect((await stage.heard()).at(-1)).toEqual({ type: 'export' })
  })

  test('what is told over the drawing shows its shapes', async () => {
    const stage = await shown()
    await stage.page.getByRole('button', { name: /narrowest rip/ }).click()
    expect(await stage.page.locator('.marks .shown.piece').count()).toBe(1)
    await stage.page.keyboard.press('Tab')
    expect(await stage.page.locator('.marks .shown').count()).toBe(0)
  })
})
