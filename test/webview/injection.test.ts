import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { previewChange } from '../../server/src/features/preview-change.ts'
import { visible } from '../../server/src/report/visible.ts'
import { HOUSE } from '../features/house.ts'
import { previewOfText } from './pictures.ts'
import { openTheatre, type Stage, type Theatre } from './stage.ts'

let theatre: Theatre
/** One page for all of them: what one payload leaves behind the next would meet. */
let shared: Stage
beforeAll(async () => {
  theatre = await openTheatre()
  shared = await theatre.stage()
  for (const summary of await shared.page.locator('summary').all()) await summary.click()
})
afterAll(() => theatre.close())

const PAYLOADS = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '"><svg onload=alert(1)>',
  `'"--></style></title><script>alert(1)</script>`,
  '<a href="javascript:alert(1)">x</a>',
  '[x](command:workbench.action.quit)',
  '<base href=//example.invalid>',
  '<form action=//example.invalid><button>x</button></form>',
  '<iframe srcdoc=x></iframe>',
  '<foreignObject><body onload=alert(1)></body></foreignObject>',
  '=HYPERLINK(x)',
  '{{constructor}} $\u007balert(1)}',
  '__proto__',
  'constructor',
  'toString',
  'url(#wall)',
  'a\u202eb',
  '\u200bx',
]

/** Every name that a job has, and its notes. */
function jobNamed(name: string): string {
  return HOUSE.replace('job House', `job ${name}\n  site  ${name}\n  note  ${name}`)
    .replaceAll('den', name)
    .replaceAll('ground', `${name} floor`)
    .replaceAll('ash', `${name} wood`)
    .concat(`hold ${name}\nroom ${name} loft\n  north 9'\n  note ${name}\n`)
}

/** What the page may be made of. */
const OURS = new Set(
  'html head meta title link body script header main section div h1 h2 p ul ol li button label span strong select option details summary dl dt dd svg g defs pattern path rect circle text'.split(
    ' ',
  ),
)

describe('a name that means harm is text, and nothing else', () => {
  test.each(PAYLOADS)('%s', async (payload) => {
    const quoted = `"${payload.replaceAll('"', '')}"`
    const { picture } = previewOfText(jobNamed(quoted))
    const { page, say, trouble, heard } = shared
    await say({ type: 'preview', change: previewChange(null, picture) })
    await say({ type: 'cursor', ids: [payload, `room ${payload}`, '"] *, [x="'] })
    await say({ type: 'notice', text: payload })
    await page.waitForFunction(
      (title) => document.querySelector('h1')?.textContent === title,
      visible(picture.scene.title),
    )
    const course = page.locator('.course > button').first()
    if ((await course.count()) > 0) await course.click()
    await page.locator('.plan').focus()
    for (const key of ['ArrowRight', 'PageUp', 'PageUp', 'Enter']) await page.keyboard.press(key)

    const made = await page.evaluate(() => ({
      names: [...new Set([...document.querySelectorAll('*')].map((one) => one.localName))],
      handlers: [...document.querySelectorAll('*')].flatMap((one) =>
        one.getAttributeNames().filter((name) => /^on|href|srcdoc|action/.test(name)),
      ),
      scripts: document.scripts.length,
      text: document.body.textContent,
      base: document.baseURI,
    }))
    expect(made.names.filter((name) => !OURS.has(name))).toEqual([])
    expect(made.handlers).toEqual(['href'])
    expect(made.scripts).toBe(1)
    expect(made.base).toMatch(/page\.html$/)
    expect(made.text).toContain(visible(quoted.slice(1, -1)))
    expect(made.text).not.toMatch(/[\u202e\u200b]/)
    expect(trouble()).toEqual([])
    for (const message of await heard()) expect(['ready', 'go to']).toContain(message.type)
  })

  test('and it is shown as it was written', async () => {
    const { picture } = previewOfText(jobNamed('"<b>den</b>"'))
    const { page, say } = await theatre.stage()
    await say({ type: 'preview', change: previewChange(null, picture) })
    await page.waitForSelector('.wall-face', { state: 'attached' })
    expect(await page.locator('h1').textContent()).toContain('<b>den</b>')
    const words = await page.locator('#words').textContent()
    expect(words).toContain('<b>den</b>: ')
  })
})

describe('what is no message of ours', () => {
  test('changes nothing', async () => {
    const { page, say, sayAnything, trouble } = await theatre.stage()
    const { picture } = previewOfText(HOUSE)
    await say({ type: 'preview', change: previewChange(null, picture) })
    await page.waitForSelector('.piece')
    const body = () => page.evaluate(() => document.body.innerHTML)
    const before = await body()
    const odd = structuredClone(picture) as unknown as { scene: { shapes: unknown[] } }
    odd.scene.shapes.push({ kind: 'script', id: 'x', span: null, text: 'alert(1)' })
    for (const message of [
      'notice',
      { type: 'notice', text: { toString: 1 } },
      { type: 'preview', change: { kind: 'whole', picture: odd } },
      { type: 'eval', text: 'alert(1)' },
      null,
    ])
      await sayAnything(message)
    expect(await body()).toBe(before)
    expect(trouble()).toEqual([])
  })
})
