import { expect, type Locator, type Page } from 'playwright/test'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { itemHolding, findParameter, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import type { Stage } from '@/shared/plan/stage'
import { enter, enterAll, formOf, send } from '@/tests/browser/at-work'

/** What people do in one programme, on its own pages. */
export class ProgrammeAtWork {
  constructor(private readonly code: string) {}

  async open(page: Page, path = ''): Promise<void> {
    await page.goto(`/programmes/${this.code}${path}`)
  }

  /** Opens the programme as a design engineer and invites production and quality. */
  async begin(page: Page, title: string): Promise<void> {
    await page.goto('/programmes/new')
    await enterAll(page.locator('main'), '', {
      code: this.code,
      title,
      productClass: '3',
      alloyFamily: 'tin-lead',
      serviceYears: 20,
      environment: 'GF',
      annualVolume: 400,
    })
    await page.getByRole('radio', { name: 'Design engineering' }).check()
    await send(page, page.getByRole('button', { name: 'Open the programme' }))
    await this.invite(page, DEMO_PEOPLE.petra.email, 'production')
    await this.invite(page, DEMO_PEOPLE.quill.email, 'quality')
  }

  async invite(page: Page, email: string, department: Department): Promise<void> {
    await this.open(page, '/people')
    const form = formOf(page, 'Invite a person')
    await form.locator('[name="email"]').fill(email)
    await form.getByRole('radio', { name: DEPARTMENT_NAMES[department] }).check()
    await send(page, form.getByRole('button', { name: 'Invite' }))
  }

  /** Specifies a value in the form its declaration gives, on the item it belongs to. */
  async specify(page: Page, key: string, value: unknown, reason: string): Promise<void> {
    const parameter = findParameter(key)
    const item = itemHolding.parameter(key)
    if (!parameter || !item) throw new Error(`There is no parameter ${key}.`)
    await this.open(page, `/items/${item.key}`)
    const form = formOf(page, `Revise ${parameter.label}`)
    await form.locator('summary').first().click()
    if (parameter.shape.kind === 'field') await enter(form.locator('[name="value"]'), value)
    else await enterRows(form, value as readonly Readonly<Record<string, unknown>>[])
    await form.locator('[name="reason"]').fill(reason)
    await send(page, form.getByRole('button', { name: /^Save as revision/ }))
  }

  /** Adds an item of the programme's own to the specification. */
  async addItem(page: Page, title: string, approvers: readonly Department[]): Promise<void> {
    await this.open(page, '/items/new')
    const add = formOf(page, 'Add an item to the plan')
    await enterAll(add, 'item.', {
      title,
      asks: 'Is it settled?',
      stage: 'specification',
      owner: 'design',
    })
    for (const department of approvers) await add.locator(`[name="item.approvers.${department}"]`).check()
    await send(page, add.getByRole('button', { name: 'Add the item' }))
  }

  async attachFile(page: Page, item: string, kind: string, name: string, text: string): Promise<void> {
    await this.open(page, `/items/${item}#evidence`)
    const form = formOf(page, 'Attach a file')
    await form.locator('[name="kind"]').fill(kind)
    await form
      .locator('[name="file"]')
      .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })
    await form.getByRole('button', { name: 'Attach the file' }).click()
    await expect(page.getByRole('link', { name }).first()).toBeVisible()
  }

  /** Approves every item of a stage for a department: ticked one by one, signed once. */
  async approve(page: Page, stage: Stage, department: Department): Promise<void> {
    const items = STANDARD_PLAN.filter((item) => item.stage === stage && item.approvers.includes(department))
    if (items.length === 0) return
    const form = await this.signList(page, stage, department)
    const named = items.map(({ key }) => key)
    // What cannot be approved yet stands below with what keeps it from it: a failure tells that.
    const notNow = await page.locator('.sign-not-now li').evaluateAll((lines) =>
      lines.map((line) => ({
        item: line.querySelector('a')?.getAttribute('href')?.split('/').at(-1) ?? '',
        why: line.textContent,
      })),
    )
    expect(notNow.filter(({ item }) => named.includes(item))).toEqual([])
    for (const key of named) await form.locator(`[name="items.${key}"]`).check()
    await form.locator('[name="password"]').fill(DEMO_PASSWORD)
    await send(page, form.getByRole('button', { name: /^Sign the ticked items/ }))
  }

  /** The list of what a department can approve in a stage. */
  async signList(page: Page, stage: Stage, department: Department): Promise<Locator> {
    await this.open(page, `/sign?stage=${stage}`)
    return formOf(page, `Approve for ${DEPARTMENT_NAMES[department]}`)
  }

  async signGate(page: Page, stage: Stage, department: Department): Promise<void> {
    await this.open(page, `/gates/${stage}`)
    const form = formOf(page, `Sign for ${DEPARTMENT_NAMES[department]}`)
    await form.locator('[name="password"]').fill(DEMO_PASSWORD)
    await send(page, form.getByRole('button', { name: /^Sign the gate/ }))
  }

  /** States a line of the works that the boards are made on. */
  async stateLine(page: Page, line: string): Promise<void> {
    await this.open(page, '/logs')
    const form = formOf(page, 'State a line')
    await form.locator('[name="line"]').selectOption(line)
    await send(page, form.getByRole('button', { name: 'State the line' }))
  }

  /** Records the readings of a gauge study, pasted from a spreadsheet. */
  async recordStudy(page: Page, tag: string, study: string, rows: readonly Row[]): Promise<void> {
    await this.open(page, `/instruments/${tag}`)
    const form = formOf(page, 'Record a gauge study')
    await form.locator('summary').first().click()
    await form.locator('[name="study"]').fill(study)
    const text = rows.map((row) => Object.values(row).join('\t')).join('\n')
    await form.locator('[name="rows.0.part"]').evaluate((box, pasted) => {
      const clipboardData = new DataTransfer()
      clipboardData.setData('text/plain', pasted)
      box.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
    }, text)
    await expect(form.locator(`[name="rows.${rows.length - 1}.part"]`)).toBeVisible()
    await send(page, form.getByRole('button', { name: 'Record the study' }))
  }

  /** What a person of the works passed, for all programmes. */
  async addTraining(page: Page, row: Readonly<Record<string, unknown>>): Promise<void> {
    await page.goto('/works/people')
    await addOne(page, row)
  }

  async addRecord(page: Page, kind: string, row: Readonly<Record<string, unknown>>): Promise<void> {
    await this.open(page, `/records/${kind}`)
    await addOne(page, row)
  }
}

async function addOne(page: Page, row: Readonly<Record<string, unknown>>): Promise<void> {
  const button = page.getByRole('button', { name: 'Add it', exact: true })
  await enterAll(page.locator('form').filter({ has: button }), 'rows.0.', row)
  await send(page, button)
}

type Row = Readonly<Record<string, string | number>>

async function enterRows(form: Locator, rows: readonly Readonly<Record<string, unknown>>[]): Promise<void> {
  for (const [index, row] of rows.entries()) {
    const first = form.locator(`[name^="value.${index}."]`).first()
    if ((await first.count()) === 0) await form.getByRole('button', { name: 'Add five rows' }).click()
    await enterAll(form, `value.${index}.`, row)
  }
}
