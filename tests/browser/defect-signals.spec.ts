import { expect, test } from 'playwright/test'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { atWork, enter, enterAll, formOf, send, unfold } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A programme of its own for each telling, so that a second telling finds nothing of the first. */
const CODE = `DS-${Date.now().toString(36).slice(-6).toUpperCase()}`
const programme = new ProgrammeAtWork(CODE)
const FINDING = '/findings/defect-signals-answered'

test('A chart of defects signals, and the gate waits for the cause', async ({ browser }) => {
  test.setTimeout(5 * 60_000)
  const ines = await atWork(browser, 'ines')
  const quill = await atWork(browser, 'quill')

  await test.step('Quill asks for the c chart to be answered, and inspects ten boards', async () => {
    await programme.begin(ines, 'Level switch')
    await programme.specify(ines, 'lead-holes', LEVEL_TRANSMITTER['lead-holes'], 'From the layout.')
    await programme.specify(
      quill,
      'defect-charts',
      [{ chart: 'c' }],
      'Each board of a first series is looked at.',
    )
    await programme.open(quill, '/inspections')
    const many = formOf(quill, 'Record many inspections')
    await unfold(many)
    const bridges = Array.from({ length: 9 }, (_, at) => `bridge@U${at + 1}-1`)
    await enterAll(many, '', {
      inspector: 'Quill Amaro',
      magnification: 4,
      lines: Array.from({ length: 10 }, (_, at) =>
        [`DS-0${at}`, '306', ...(at === 6 ? bridges : at % 2 ? ['void@T1-1'] : [])].join('; '),
      ).join('\n'),
    })
    await send(quill, many.getByRole('button', { name: 'Record them all, or none' }))
  })

  await test.step('The seventh board lies beyond the limits, and the finding fails', async () => {
    await programme.open(quill, '/defect-charts')
    const signals = quill.getByRole('table', { name: 'Signals of the chart' })
    await expect(signals.getByRole('rowheader')).toHaveText(['DS-06'])
    await programme.open(quill, FINDING)
    await expect(quill.getByText('1 of 1 signal unanswered').first()).toBeVisible()
  })

  await test.step('An answer to nothing is refused, and keeps what was typed', async () => {
    await programme.open(quill, '/defect-charts')
    const answer = formOf(quill, 'Answer to signals')
    await enter(answer.locator('[name="rows.0.cause"]'), 'The board lay askew in its carrier.')
    await enter(answer.locator('[name="rows.0.action"]'), 'Carrier shimmed; the board reworked.')
    await answer.getByRole('button', { name: 'Record the answer' }).click()
    await expect(answer.getByRole('alert')).toContainText('Tick the signals that this answers.')
    await expect(answer.locator('[name="rows.0.cause"]')).toHaveValue('The board lay askew in its carrier.')
  })

  await test.step('With the signal ticked it is recorded, and the finding meets', async () => {
    const answer = formOf(quill, 'Answer to signals')
    await answer.getByRole('checkbox', { name: /a point beyond the control limits, DS-06/ }).check()
    await send(quill, answer.getByRole('button', { name: 'Record the answer' }))
    await expect(answer).toHaveCount(0)
    await expect(quill.getByText('The board lay askew in its carrier.')).toBeVisible()
    await programme.open(quill, FINDING)
    await expect(quill.getByText('10 samples, 1 signal, answered.').first()).toBeVisible()
  })
})
