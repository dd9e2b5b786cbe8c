import { expect, type Page } from 'playwright/test'
import type { LogStory } from '@/seed/level-transmitter/logs'
import { csvOf } from '@/seed/readings'
import type { MachineKind } from '@/shared/works/machine-kind'
import { chooseCsv, confirmImport } from '@/tests/browser/csv-import'
import { csvFile, enter, enterAll, formOf, send } from '@/tests/browser/at-work'

/** What people do at the works, on its own pages. */
export class WorksAtWork {
  constructor(private readonly line: string) {}

  async openLine(page: Page, name: string): Promise<void> {
    await page.goto('/works')
    const form = formOf(page, 'Open a line')
    await enterAll(form, '', { code: this.line, name })
    await send(page, form.getByRole('button', { name: 'Open the line' }))
  }

  async openMachine(page: Page, code: string, kind: MachineKind): Promise<void> {
    await page.goto(`/works/lines/${encodeURIComponent(this.line)}`)
    const form = formOf(page, 'Open a machine')
    await enterAll(form, '', { code, kind })
    await send(page, form.getByRole('button', { name: 'Open the machine' }))
  }

  async openLog(
    page: Page,
    machine: string,
    log: Pick<LogStory, 'code' | 'characteristic' | 'instrument'>,
    instruments: Readonly<Record<string, string>> = {},
  ): Promise<void> {
    await page.goto(`/works/machines/${encodeURIComponent(machine)}`)
    const form = formOf(page, 'Open a log')
    await enterAll(form, '', { code: log.code, characteristic: log.characteristic })
    if (log.instrument)
      await form.locator('[name="instrument"]').selectOption(instruments[log.instrument] ?? '')
    await send(page, form.getByRole('button', { name: 'Open the log' }))
  }

  async open(page: Page, machine: string, log: string): Promise<void> {
    await page.goto(`/works/machines/${encodeURIComponent(machine)}/logs/${encodeURIComponent(log)}`)
  }

  async importReadings(page: Page, machine: string, log: LogStory): Promise<void> {
    await this.open(page, machine, log.code)
    const rows = log.rows.map(({ at, ...row }) => ({ Time: new Date(Number(at)).toISOString(), ...row }))
    await chooseCsv(page, csvFile(`${log.code}.csv`, csvOf(rows)))
    for (const name of Object.keys(log.rows[0] ?? {})) {
      await page.locator(`[name="map.${name}"]`).selectOption(name === 'at' ? 'Time' : name)
    }
    await page.getByRole('button', { name: 'Read it again so' }).click()
    await confirmImport(page)
  }

  /** Gives every signal of a log that wants one a cause, once for all programmes. */
  async answerSignals(page: Page, machine: string, log: string): Promise<void> {
    await this.open(page, machine, log)
    const answer = formOf(page, 'Answer to signals')
    if ((await answer.count()) === 0) return
    for (const box of await answer.getByRole('checkbox').all()) await box.check()
    await enter(answer.locator('[name="rows.0.answer"]'), 'cause-removed')
    await enterAll(answer, 'rows.0.', {
      cause: 'Read before the machine had settled.',
      action: 'Read half an hour after the start from now on.',
    })
    await send(page, answer.getByRole('button', { name: /^Record/ }))
    await expect(answer).toHaveCount(0)
  }
}
