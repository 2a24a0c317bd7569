import { expect, type Locator, type Page } from 'playwright/test'

/** What a person does at the table, by hand and by key. */
export class Table {
  constructor(readonly page: Page) {}

  /** Opens the page with the cautions read, so that nothing lies over the sheet, and every conductor drawn. */
  async open(view: 'both-poles' | 'first-start' = 'both-poles'): Promise<void> {
    await this.page.addInitScript((v) => {
      localStorage.setItem('loomwright-cautions', 'read')
      if (v !== 'first-start' && !localStorage.getItem('loomwright-view'))
        localStorage.setItem('loomwright-view', v)
    }, view)
    await this.page.goto('/')
    await expect(this.page.locator('.app')).toBeVisible()
    await expect(this.checks).not.toHaveText('Checking…')
  }

  async dropFile(name: string, text: string): Promise<void> {
    const data = await this.page.evaluateHandle(
      ([n, t]) => {
        const transfer = new DataTransfer()
        transfer.items.add(new File([t!], n!, { type: 'application/json' }))
        return transfer
      },
      [name, text],
    )
    await this.page.dispatchEvent('body', 'dragover', { dataTransfer: data })
    await this.page.dispatchEvent('body', 'drop', { dataTransfer: data })
  }

  async openSmallVan(text: string): Promise<void> {
    await this.open()
    await this.dropFile('small-van.json', text)
    await expect(this.page.locator('h1')).toContainText('Small van')
    await expect(this.part('G1')).toBeVisible()
    await this.settled()
    // The sheet glides to the whole drawing.
    await this.page.waitForTimeout(400)
  }

  /** Answers and layout are those of the newest edit. */
  async settled(): Promise<void> {
    await expect(this.page.locator('.sheet')).toHaveAttribute('aria-busy', 'false')
  }

  get checks(): Locator {
    return this.page.getByRole('status', { name: 'Checks' })
  }
  get said(): Locator {
    return this.page.getByRole('status', { name: 'Last step' })
  }
  get card(): Locator {
    return this.page.getByRole('region', { name: 'Card' })
  }
  get findings(): Locator {
    return this.page.getByRole('region', { name: 'Findings' })
  }

  part(designation: string): Locator {
    return this.page.locator(`.part[data-designation="${designation}"]`)
  }
  run(number: string): Locator {
    return this.page.locator(`.run[data-number="${number}"]`)
  }
  terminal(designation: string, key: string): Locator {
    return this.part(designation).locator(`[data-handleid="${key}"]`)
  }

  async middle(of: Locator): Promise<readonly [number, number]> {
    const box = await of.boundingBox()
    if (!box) throw new Error('not on the page')
    return [box.x + box.width / 2, box.y + box.height / 2]
  }

  async drag(from: readonly [number, number], to: readonly [number, number]): Promise<void> {
    const { mouse } = this.page
    await mouse.move(...from)
    await mouse.down()
    await mouse.move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, { steps: 4 })
    await mouse.move(...to, { steps: 4 })
    await mouse.up()
  }

  async join(a: readonly [string, string], b: readonly [string, string]): Promise<void> {
    await this.settled()
    await this.drag(await this.middle(this.terminal(...a)), await this.middle(this.terminal(...b)))
  }

  async dragFromShelf(kind: string, to: readonly [number, number]): Promise<void> {
    const item = this.page.locator(`[data-kind="${kind}"]`)
    await item.scrollIntoViewIfNeeded()
    await this.drag(await this.middle(item), to)
  }

  async pickRun(number: string): Promise<void> {
    await this.page.mouse.click(...(await this.halfway(number)))
  }

  /** The point halfway along the line of a conductor. */
  async halfway(number: string): Promise<readonly [number, number]> {
    await this.settled()
    return await this.run(number)
      .locator('.catch')
      .evaluate((path) => {
        const line = path as SVGPathElement
        const p = line.getPointAtLength(line.getTotalLength() / 2)
        const m = line.getScreenCTM()!
        return [p.x * m.a + m.e, p.y * m.d + m.f] as const
      })
  }
}
