import { expect, test, type Page } from 'playwright/test'
import { DEMO_PASSWORD } from '@/seed/people'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { atWork, enterAll, formOf, send, unfold } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A code of its own for each run, so that the story can be told again to the same installation. */
const CODE = `GB-${Date.now().toString(36).toUpperCase()}`
const programme = new ProgrammeAtWork(CODE)
const SPECIFICATION = STANDARD_PLAN.filter(({ stage }) => stage === 'specification')

test('nobody passes a gate over a blocker of any kind, and each refusal says why', async ({ browser }) => {
  test.setTimeout(20 * 60_000)
  const tomas = await atWork(browser, 'tomas')
  const petra = await atWork(browser, 'petra')
  const quill = await atWork(browser, 'quill')
  /** Where Tomas left the gate's page open, with its form, while there was nothing in the way. */
  const gate = await tomas.context().newPage()
  // It heard nothing of what others did since.
  await gate.route('**/live?*', (route) => route.abort())

  await test.step('Tomas opens a programme in which nothing is left to settle', async () => {
    await programme.begin(tomas, 'Relay board for blockers')
    for (const { key } of SPECIFICATION) {
      await proposeTailoring(tomas, key)
      await agreeToTailoring(quill, key)
    }
    await gate.goto(`/programmes/${CODE}/gates/specification`)
    await expect(gate.getByText('Nothing outstanding')).toBeVisible()
  })

  /** The open form is sent; the refusal has to say this, and the gate's page has to list it. */
  const refused = async (first: string, alsoListed: readonly string[] = []) => {
    await sign(gate)
    await expect(gate.getByRole('alert').first()).toContainText(`The gate is blocked. ${first}`)
    await programme.open(tomas, '/gates/specification')
    await expect(formOf(tomas, 'Sign for Design engineering')).toHaveCount(0)
    await expect(tomas.getByText(`The gate is blocked. ${first}`).first()).toBeVisible()
    for (const message of alsoListed) await expect(tomas.getByRole('link', { name: message })).toBeVisible()
  }

  await test.step('a gate before it that is not open', async () => {
    await aimAt(gate, { stage: 'evaluation' })
    await sign(gate)
    await expect(gate.getByRole('alert').first()).toContainText(
      'The gate is blocked. Specification gate: The specification gate is not open.',
    )
    await aimAt(gate, { stage: 'specification' })
  })

  await test.step('what blocks PX-12: findings, an action and approvals', async () => {
    await tomas.goto('/programmes/PX-12/gates/evaluation')
    const blocked = tomas.getByText('The gate is blocked. ').first()
    const reason = await blocked.innerText()
    await expect(tomas.getByRole('link', { name: /^Action 1 to Production is unanswered/ })).toBeVisible()
    await expect(tomas.getByRole('link', { name: /^Wetting time by rotary dip: / }).first()).toBeVisible()
    await expect(tomas.getByRole('link', { name: /^Waits for the approval of / }).first()).toBeVisible()
    await aimAt(gate, { stage: 'evaluation', programme: 'PX-12' })
    await sign(gate)
    await expect(gate.getByRole('alert').first()).toContainText(reason)
    await aimAt(gate, { stage: 'specification', programme: CODE })
  })

  await test.step('a value that is not specified', async () => {
    await bringBack(tomas, 'interconnection')
    await refused('Connection to the equipment: Not specified: Connection to the equipment.')
  })

  await test.step('a proposal to set aside that quality has not decided', async () => {
    await proposeTailoring(tomas, 'interconnection')
    await refused('Connection to the equipment: It is proposed as not applicable; quality has not decided.')
    await bringBack(tomas, 'interconnection')
  })

  await test.step('a finding that cannot be told, then one that fails, then its concession', async () => {
    await programme.specify(tomas, 'interconnection', 'edge', 'It slides into the rack.')
    await programme.specify(tomas, 'contact-gold', 2, 'As the connector’s maker asks.')
    await programme.specify(tomas, 'contact-nickel', 6, 'As the connector’s maker asks.')
    await refused(
      'Connection to the equipment: Edge contacts: Cover: production has not said whether the contacts are covered.',
    )
    await programme.specify(petra, 'contacts-covered', true, 'A peelable mask is used.')
    await programme.specify(tomas, 'contact-gold', 0.1, 'As the supplier offers it.')
    await refused('Connection to the equipment: Edge contacts: Contact gold: 0.1 µm ordered.')
    await programme.open(tomas, '/findings/edge-contacts')
    const ask = formOf(tomas, 'Ask for a concession')
    await enterAll(ask, '', { why: 'It is plugged in once and stays.', quantity: 90 })
    await send(tomas, ask.getByRole('button', { name: 'Ask for a concession' }))
    await refused('Connection to the equipment: Edge contacts: ', [
      'Concession 1 is asked for and not decided.',
    ])
    await proposeTailoring(tomas, 'interconnection')
    await agreeToTailoring(quill, 'interconnection')
  })

  await test.step('evidence that is missing, a question that is open, an approval that is', async () => {
    await programme.open(tomas, '/items/new')
    const add = formOf(tomas, 'Add an item to the plan')
    await enterAll(add, 'item.', {
      title: 'Vibration',
      asks: 'Does the board stand the pump’s vibration?',
      stage: 'specification',
      owner: 'design',
      evidence: 'report of the vibration test',
    })
    await add.getByRole('checkbox', { name: 'Design engineering' }).check()
    await add.getByRole('checkbox', { name: 'Quality' }).check()
    await send(tomas, add.getByRole('button', { name: 'Add the item' }))
    await refused('Vibration: Evidence is missing: report of the vibration test.')

    await programme.attachFile(tomas, 'own-1', 'asked for', 'vibration.txt', 'Sine sweep, no resonance.')
    await refused('Vibration: Awaiting approval by Design engineering.')

    await programme.open(tomas, '/items/own-1')
    const ask = formOf(tomas, 'Ask another department')
    await ask.locator('summary').click()
    await enterAll(ask, '', {
      from: 'design',
      to: 'production',
      kind: 'feasibility',
      question: 'Can the relay be glued down?',
      dueOn: '2099-01-31',
    })
    await send(tomas, ask.getByRole('button', { name: 'Ask' }))
    await refused('Vibration: Action 1 to Production is unanswered.')

    await programme.open(petra, '/actions/1')
    const answer = formOf(petra, 'Your answer')
    await answer.getByRole('radio', { name: 'Yes', exact: true }).check()
    await enterAll(answer, '', { comment: 'With the adhesive we have.' })
    await send(petra, answer.getByRole('button', { name: 'Send the answer' }))
    await refused('Vibration: Action 1 is answered but not accepted.')
    await programme.open(tomas, '/actions/1')
    await send(tomas, formOf(tomas, 'Accept the answer').getByRole('button', { name: 'Accept the answer' }))
  })

  await test.step('an approval that lapsed', async () => {
    await approve(tomas, 'own-1', 'Design engineering')
    await refused('Vibration: Awaiting approval by Quality.')
    await programme.attachFile(petra, 'own-1', 'asked for', 'vibration-2.txt', 'Random, 4 h.')
    await refused(
      'Vibration: The approval of Design engineering (Tomas Lindqvist) lapsed: what it covered has changed.',
      ['Waits for the approval of Quality.'],
    )
    await approve(tomas, 'own-1', 'Design engineering')
    await approve(quill, 'own-1', 'Quality')
  })

  await test.step('a turn that is somebody else’s, and a stage that changed while it was read', async () => {
    await programme.open(quill, '/gates/specification')
    await expect(quill.getByText('Design engineering signs before Quality.')).toBeVisible()
    await sign(gate)
    await expect(gate.getByRole('alert').first()).toContainText(
      'The stage changed since you opened it. Read it again before you sign.',
    )
  })

  await test.step('a gate before it that no longer stands', async () => {
    await programme.signGate(tomas, 'specification', 'design')
    await programme.signGate(petra, 'specification', 'production')
    await programme.signGate(quill, 'specification', 'quality')
    await programme.attachFile(petra, 'own-1', 'asked for', 'vibration-3.txt', 'Shock, 30 g.')
    await programme.open(tomas, '/gates/evaluation')
    const reason =
      'The gate is blocked. Specification gate: The specification gate no longer stands and must be signed again.'
    await expect(tomas.getByText(reason).first()).toBeVisible()
    await aimAt(gate, { stage: 'evaluation' })
    await sign(gate)
    await expect(gate.getByRole('alert').first()).toContainText(reason)
  })
})

async function sign(page: Page): Promise<void> {
  const form = formOf(page, 'Sign for Design engineering')
  await form.locator('[name="password"]').fill(DEMO_PASSWORD)
  const answered = page.waitForResponse((response) => response.request().method() === 'POST')
  await form.getByRole('button', { name: /^Sign the gate/ }).click()
  await answered
}

/** Turns a form that was given for one gate against another, as somebody might who will not be told. */
const aimAt = (page: Page, hidden: Readonly<Record<string, string>>): Promise<void> =>
  formOf(page, 'Sign for Design engineering').evaluate((form, values) => {
    for (const [name, value] of Object.entries(values))
      (form as HTMLFormElement).querySelector<HTMLInputElement>(`[name="${name}"]`)!.value = value
  }, hidden)

async function proposeTailoring(page: Page, item: string): Promise<void> {
  await programme.open(page, `/items/${item}`)
  const form = formOf(page, 'Propose as not applicable')
  await form.locator('summary').click()
  await form.locator('[name="reason"]').fill('Settled on the board this one is a copy of.')
  await send(page, form.getByRole('button', { name: 'Propose as not applicable' }))
}

async function agreeToTailoring(page: Page, item: string): Promise<void> {
  await programme.open(page, `/items/${item}`)
  const form = formOf(page, 'Decide')
  await form.getByRole('radio', { name: /^Agree/ }).check()
  await send(page, form.getByRole('button', { name: 'Decide' }))
}

async function bringBack(page: Page, item: string): Promise<void> {
  await programme.open(page, `/items/${item}`)
  const form = formOf(page, 'Bring the item back')
  await unfold(form)
  await form.locator('[name="reason"]').fill('It applies after all.')
  await send(page, form.getByRole('button', { name: 'Bring the item back' }))
}

async function approve(page: Page, item: string, department: string): Promise<void> {
  await programme.open(page, `/items/${item}`)
  const form = formOf(page, `Approve for ${department}`)
  await form.locator('[name="password"]').fill(DEMO_PASSWORD)
  await send(page, form.getByRole('button', { name: /^Approve for/ }))
}
