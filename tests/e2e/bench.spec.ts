import { writeFileSync } from 'node:fs'
import AxeBuilder from '@axe-core/playwright'
import { expect, type Locator, type Page, test } from 'playwright/test'
import { apply, builtEdit, type Design, readDesign, tickEdit, writeDesign } from '../../engine'
import { conductorNumbered } from '../build'
import { Table } from './table'
import { smallVan } from './van'

test.use({ viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true })

/** What somebody with gloves on does at the bench. */
class BenchHands {
  constructor(readonly page: Page) {}

  /** The small van open on the bench page, and then no network any more. */
  async begin(): Promise<void> {
    // Without the browser's own file window the ordinary chooser comes.
    await this.page.addInitScript(() => {
      Object.assign(window, { showSaveFilePicker: undefined, showOpenFilePicker: undefined })
    })
    await new Table(this.page).openSmallVan(smallVan())
    await this.stage('Bench').tap()
    await expect(this.card).toBeVisible()
    await this.page.context().setOffline(true)
  }

  get card(): Locator {
    return this.page.locator('.bench-card')
  }
  get number(): Locator {
    return this.card.getByRole('heading', { level: 2 })
  }
  get whole(): Locator {
    return this.page.locator('.bench-progress.whole')
  }
  step(name: string): Locator {
    return this.card.getByRole('button', { name, exact: true })
  }
  async take(digits: string, number: string): Promise<void> {
    await this.page.getByLabel('Conductor number').fill(digits)
    await this.page.getByRole('list', { name: 'Conductors found' }).getByRole('button').first().tap()
    await expect(this.number).toHaveText(number)
  }
  async otherwise(): Promise<void> {
    await this.card.getByRole('button', { name: 'Built otherwise' }).tap()
    await expect(this.card.getByLabel('Actual size')).toBeInViewport()
  }
  stage(name: string): Locator {
    return this.page.getByRole('navigation', { name: 'Stages of the job' }).getByRole('button', { name })
  }
  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name })
  }
}

const STEPS = ['Cut', 'Crimped', 'Labelled', 'Terminated', 'Torqued']

test('offline and with gloves on: find, tick, go on; every tick is undone by itself, and nothing is lost', async ({
  page,
}) => {
  const hands = new BenchHands(page)
  await hands.begin()

  await test.step('what must be known stands there in large type', async () => {
    await hands.take('2', 'W2')
    await expect(hands.card).toContainText('35 mm²')
    await expect(hands.card).toContainText('1.20 m')
    await expect(hands.card).toContainText('1.00 m + 2 × 0.1 m')
    await expect(hands.card).toContainText('W2 F1:2 / F2:in')
    await expect(hands.card.getByRole('region', { name: 'From' })).toContainText('F1 Main fuse')
    await expect(hands.card.getByRole('region', { name: 'To' })).toContainText('F2 Loads')
    await expect(hands.card.locator('.swatch')).toHaveText('RD')
    await expect(hands.card).toContainText('not stated')
  })

  await test.step('a torque read from the maker’s sheet holds for every conductor on that terminal', async () => {
    const from = hands.card.getByRole('region', { name: 'From' })
    await from.getByRole('button', { name: /maker/ }).tap()
    await from.getByLabel(/Torque stated/).fill('12')
    await from.getByLabel(/Torque stated/).press('Enter')
    await expect(from).toContainText('12 N·m')
  })

  await test.step('steps are ticked, and the next one is one big button away', async () => {
    for (const name of STEPS) await hands.step(name).tap()
    for (const name of STEPS) await expect(hands.step(name)).toHaveAttribute('aria-pressed', 'true')
    await expect(hands.whole).toContainText('1 of 8 conductors finished')
    await hands.button(/^Next conductor/).tap()
    await expect(hands.number).not.toHaveText('W2')
    await hands.button('Undo: W2 torqued').tap()
    await expect(hands.whole).toContainText('0 of 8')
    await hands.button('Redo: W2 torqued').tap()
    await expect(hands.whole).toContainText('1 of 8')
  })

  await test.step('every building order holds every conductor', async () => {
    for (const order of ['By size', 'By location', 'By part']) {
      await hands.button(order).tap()
      await expect(page.locator('.bench-list li')).toHaveCount(8)
    }
  })

  await test.step('nothing that is pressed is lower than 56 px', async () => {
    const low = await page
      .locator('.bench button:visible')
      .evaluateAll((buttons) =>
        buttons
          .map((b) => `${b.getAttribute('aria-label') ?? b.textContent}: ${b.getBoundingClientRect().height}`)
          .filter((line) => Number(line.split(': ').at(-1)) < 56),
      )
    expect(low).toEqual([])
  })

  await test.step('a drawing that changes afterwards asks for another look', async () => {
    await hands.stage('Drawing').tap()
    await page.keyboard.press('f')
    await page.getByRole('dialog').getByRole('combobox').fill('W2')
    await page.keyboard.press('Enter')
    await new Table(page).card.getByLabel('Length').fill('2')
    await page.keyboard.press('Enter')
    await hands.stage('Bench').tap()
    await hands.take('2', 'W2')
    await expect(hands.card).toContainText('Cut before the drawing changed: length was 1 m, is 2 m.')
    await expect(hands.whole).toContainText('1 to look at again')
    await hands.card.getByRole('button', { name: /^Cut/ }).tap()
    await expect(hands.whole).toContainText('1 of 8')
  })
})

test('built otherwise: a thinner conductor warns at once, the checks speak as built, and the drawing can follow', async ({
  page,
}) => {
  const hands = new BenchHands(page)
  await hands.begin()
  await hands.take('2', 'W2')
  await hands.otherwise()
  await hands.card.getByLabel('Actual size').selectOption({ label: '6 mm²' })
  const alert = hands.card.getByRole('alert')
  await expect(alert).toContainText('drawn 35 mm², built 6 mm²')
  await expect(alert).toContainText('As built: thinner than drawn')
  await expect(alert).toContainText(/As built: .*against/)
  await expect(hands.button('Built otherwise (1)')).toBeVisible()

  await hands.card.getByLabel('Actual length').fill('1,5')
  await hands.card.getByLabel('Actual length').press('Enter')
  await hands.card.getByLabel('Remark of the workshop').fill('Round the wheel arch')
  await hands.card.getByRole('button', { name: 'Done' }).tap()
  await expect(hands.card).toContainText('Round the wheel arch')
  await expect(hands.card).toContainText('1.70 m')

  await hands.stage('Drawing').tap()
  await hands.button('Built otherwise: 2').tap()
  const list = page.getByRole('region', { name: 'Built otherwise' })
  await expect(list.locator('.differences li')).toHaveCount(2)
  await expect(list.locator('[data-rule="P2"], [data-rule="P1"], [data-rule="C1"]').first()).toContainText(
    'As built:',
  )
  await list.getByRole('button', { name: 'Draw it as built' }).last().tap()
  await expect(list.locator('.differences li')).toHaveCount(1)
  await hands.button('Undo: Draw W2 as built').tap()
  await expect(list.locator('.differences li')).toHaveCount(2)
  for (const _ of [1, 2]) await list.getByRole('button', { name: 'It is as drawn' }).first().tap()
  await expect(list).toContainText('Everything recorded is as it is drawn.')
})

test('a photo is made small, kept in the design, and what it adds is said', async ({ page }) => {
  const hands = new BenchHands(page)
  await hands.begin()
  await hands.take('1', 'W1')
  const large = await page.evaluate(() => {
    const canvas = document.createElement('canvas')
    canvas.width = 1600
    canvas.height = 1200
    const pen = canvas.getContext('2d')!
    for (let i = 0; i < 20_000; i++) {
      pen.fillStyle = `hsl(${(i * 7919) % 360} 80% ${(i * 31) % 100}%)`
      pen.fillRect((i * 37) % 1600, (i * 101) % 1200, 12, 9)
    }
    return canvas.toDataURL('image/png').split(',')[1]!
  })
  await page.locator('input[type="file"][accept="image/*"]').setInputFiles({
    ...{ name: 'loom.png', mimeType: 'image/png', buffer: Buffer.from(large, 'base64') },
  })
  await expect(new Table(page).said).toContainText(/adds \d+ kB to the design file/)
  const kept = hands.card.locator('.photos img')
  await expect(kept).toHaveCount(1)
  const size = await kept.evaluate(async (img: HTMLImageElement) => {
    await img.decode()
    return { w: img.naturalWidth, bytes: atob(img.src.split(',')[1]!).length }
  })
  expect(size.w).toBeLessThanOrEqual(640)
  expect(size.bytes).toBeLessThanOrEqual(60_000)
  await hands.button('Take out photo 1').tap()
  await expect(kept).toHaveCount(0)
})

test('the file of another device is joined in one step: counts, what both recorded, nothing lost', async ({
  page,
}, info) => {
  const theirs = otherDevice()
  const file = info.outputPath('phone.json')
  writeFileSync(file, writeDesign(theirs))
  const stranger = info.outputPath('stranger.json')
  writeFileSync(stranger, writeDesign({ ...theirs, id: 'another-van' }))

  const hands = new BenchHands(page)
  await hands.begin()
  await hands.take('3', 'W3')
  await hands.step('Cut').tap()
  await hands.otherwise()
  await hands.card.getByLabel('Actual size').selectOption({ label: '2.5 mm²' })

  await hands.button('Merge a file').tap()
  const sheet = page.getByRole('dialog', { name: 'Merge a file' })
  await sheet.getByLabel('This device is called').fill('Bench tablet')
  const open = async (path: string) => {
    const chooser = page.waitForEvent('filechooser')
    await sheet.getByRole('button', { name: /Open the other device/ }).tap()
    await (await chooser).setFiles(path)
  }
  await open(stranger)
  await expect(sheet).toContainText('a file of another design')
  await open(file)
  await expect(sheet).toContainText('2 steps newly done')
  await expect(sheet).toContainText('Both recorded different facts')
  await expect(sheet).toContainText('2.5 mm² (Bench tablet) counts')
  await sheet.getByRole('button', { name: 'Bring it in' }).tap()

  await hands.take('5', 'W5')
  await expect(hands.step('Labelled')).toHaveAttribute('aria-pressed', 'true')
  await hands.button(/^Built otherwise \(1\)/).tap()
  const both = page.getByRole('list', { name: 'Recorded differently' })
  await expect(both).toContainText('4 mm² (device phone)')
  await both.getByRole('button', { name: '4 mm² is right' }).tap()
  await expect(both).toHaveCount(0)
  await hands.button('Undo: Size of W3 as built').tap()
  await expect(both).toHaveCount(1)
  await hands.button('Undo: Bring in phone.json').tap()
  await hands.take('5', 'W5')
  await expect(hands.step('Labelled')).toHaveAttribute('aria-pressed', 'false')
  await hands.take('3', 'W3')
  await expect(hands.step('Cut')).toHaveAttribute('aria-pressed', 'true')
})

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults on the bench page on ${scheme} paper`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const faults = async () => {
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'])
        .analyze()
      return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}`))
    }
    const hands = new BenchHands(page)
    await hands.begin()
    await hands.take('2', 'W2')
    await hands.step('Cut').tap()
    await hands.otherwise()
    await hands.card.getByLabel('Actual size').selectOption({ label: '6 mm²' })
    await expect(hands.card.getByRole('alert')).toContainText('against')
    expect(await faults()).toEqual([])
    await hands.button('Built otherwise (1)').tap()
    expect(await faults()).toEqual([])
    await hands.button('Merge a file').tap()
    expect(await faults()).toEqual([])
  })

/** The small van as a phone in the vehicle has it. */
function otherDevice(): Design {
  const { design: van } = readDesign(smallVan())
  const on = (minute: number) => ({ at: `2026-01-04T09:${minute}:00.000Z`, by: 'phone' })
  return [
    tickEdit(van!, conductorNumbered(van!, 'W5'), 'labelled', true, on(10)),
    tickEdit(van!, conductorNumbered(van!, 'W6'), 'cut', true, on(11)),
    builtEdit(van!, conductorNumbered(van!, 'W3'), { what: 'size', value: '4mm2' }, on(12)),
  ].reduce((now, edit) => {
    const result = apply(now, edit)
    if (result.refused) throw new Error(result.why)
    return result.design
  }, van!)
}
