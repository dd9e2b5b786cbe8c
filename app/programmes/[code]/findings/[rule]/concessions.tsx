import { randomUUID } from 'node:crypto'
import { concessionAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { concessionStatus, isAlive } from '@/shared/gate/concession'
import { refusal } from '@/shared/policy'
import { CAN_BE_CONCEDED, type Finding } from '@/shared/rules/finding'
import { requestConcession } from '@/app/forms/command-actions'

/** Concessions asked for this finding, and the form to ask for one while it fails. */
export function Concessions({
  view,
  item,
  finding,
}: {
  view: ProgrammeView
  item: string
  finding: Finding
}) {
  const own = view.state.concessions.filter((entry) => entry.rule === finding.rule)
  const status = own.map((entry) => ({
    entry,
    status: concessionStatus(entry, finding, view.state.facts.today),
  }))
  const open = status.some((row) => isAlive(row.status))
  const mayAsk = CAN_BE_CONCEDED[finding.verdict] && !open && !refusal('request-concession', view.actor)
  if (own.length === 0 && !mayAsk) return null
  return (
    <Section
      id="concessions"
      heading="Concessions"
      lead="Permission to pass with this finding as it is: for so many boards or until a day, signed by design and by quality."
    >
      {own.length > 0 && (
        <RuledTable
          caption="Concessions on this finding"
          captionHidden
          rows={status}
          rowKey={({ entry }) => entry.number}
          columns={[
            {
              label: 'No.',
              set: 'shrink',
              cell: ({ entry }) => (
                <a href={concessionAddress(view.code, entry.number)}>Concession {entry.number}</a>
              ),
            },
            { label: 'Why', names: true, cell: ({ entry }) => entry.why },
            { label: 'Status', set: 'shrink', cell: (row) => row.status },
          ]}
        />
      )}
      {mayAsk && (
        <CommandForm
          action={requestConcession}
          formKey={randomUUID()}
          hidden={{ programme: view.code, item, rule: finding.rule }}
          label="Ask for a concession"
          className="form-narrow"
        >
          <LinesBox name="why" label="Why it is tolerable" rows={3} required />
          <NumberBox name="quantity" label="For how many" unit="boards" optional />
          <TextBox name="untilOn" type="date" label="Until" hint="A number, a last day, or both." optional />
          <SubmitButton kind="quiet">Ask for a concession</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
