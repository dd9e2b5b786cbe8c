import { priced } from '@/app/ui/priced'
import { randomUUID } from 'node:crypto'
import { actionAddress, optionAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { setMoneyCeiling } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, NumberBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { CeilingSet } from '@/lib/queries/money-ceiling'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { isKnown, type Amount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { CeilingStanding, Commitment } from '@/shared/cost/money-ceiling'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { formatNumber } from '@/shared/quantity/format'
import { refusal } from '@/shared/policy'

interface CeilingProps {
  view: ProgrammeView
  ceiling: CeilingSet | undefined
  /** Undefined where there is no ceiling to hold the money against. */
  standing: CeilingStanding | undefined
}

/** What the programme may cost, what is committed of it, and what is still open. */
export function Ceiling({ view, ceiling, standing }: CeilingProps) {
  const stands = ceiling && ceiling.amount !== null
  return (
    <Section
      id="ceiling"
      heading="Ceiling of the project’s money"
      lead={
        stands && (
          <>
            {formatNumber(ceiling.amount ?? 0, 9)} for {ceiling.boards} boards
            {ceiling.lots !== null && ` in ${ceiling.lots} lots`}, set by {ceiling.by},{' '}
            <Day at={ceiling.at} />: {ceiling.reason}
          </>
        )
      }
    >
      {!stands && <p>No ceiling is set: nothing says how much the programme may cost in all.</p>}
      {stands && standing && <Held standing={standing} code={view.code} ceiling={ceiling} />}
      <CeilingForm view={view} ceiling={ceiling} />
    </Section>
  )
}

const money = (sum: Amount, known: Amount): string =>
  isKnown(sum) ? amountInWords(sum, 9) : `not known, at least ${amountInWords(known, 9)}`

function Held({ standing, code, ceiling }: { standing: CeilingStanding; code: string; ceiling: CeilingSet }) {
  const { committed, open, committedSum, committedKnown, openSum, openKnown } = standing
  const rows = [
    ...committed.map((row) => ({ ...row, state: 'committed' })),
    ...open.map((row) => ({ ...row, state: 'open' })),
  ]
  return (
    <>
      <Said standing={standing} ceiling={ceiling} />
      <RuledTable
        caption="Money committed and open"
        rows={[
          {
            what: 'Committed: adopted studies and accepted answers',
            sum: money(committedSum, committedKnown),
          },
          { what: 'Open: undecided studies and answers not accepted', sum: money(openSum, openKnown) },
        ]}
        rowKey={({ what }) => what}
        columns={[
          { label: 'What', names: true, cell: ({ what }) => what },
          { label: priced('Amount'), set: 'number', cell: ({ sum }) => sum },
        ]}
      />
      {rows.length > 0 && (
        <RuledTable
          caption="Decision by decision"
          rows={rows}
          rowKey={({ kind, number }) => `${kind} ${number}`}
          columns={[
            { label: 'Decision', names: true, cell: (row) => <Named row={row} code={code} /> },
            { label: 'State', cell: ({ state }) => state },
            { label: priced('Amount'), set: 'number', cell: ({ amount, known }) => money(amount, known) },
          ]}
        />
      )}
    </>
  )
}

function Named({ row: { kind, number, title }, code }: { row: Commitment; code: string }) {
  return (
    <a href={kind === 'option study' ? optionAddress(code, number) : actionAddress(code, number)}>{title}</a>
  )
}

/** Passed is a warning; what is not known is never taken for within. */
function Said({
  standing: { standing, withOpen },
  ceiling,
}: {
  standing: CeilingStanding
  ceiling: CeilingSet
}) {
  const limit = formatNumber(ceiling.amount ?? 0, 9)
  switch (standing) {
    case 'passed':
      return (
        <Notice kind="warning" title="The ceiling is passed">
          What is committed comes to more than {limit}. Raise the ceiling with a reason, or decide again in
          another study.
        </Notice>
      )
    case 'may be passed':
      return (
        <Notice kind="warning" title="The ceiling may be passed">
          Within the ranges named, what is committed can come to more than {limit}.
        </Notice>
      )
    case 'not known':
      return (
        <Notice kind="warning" title="It cannot be said whether the ceiling holds">
          A figure of what is committed is not known; what is known lies within {limit}.
        </Notice>
      )
    case 'within':
      return withOpen === 'within' ? (
        <Notice kind="success" title="Within the ceiling">
          With what is open, as dear as it may come, as well.
        </Notice>
      ) : (
        <Notice kind="warning" title="What is committed lies within the ceiling; what is open may pass it">
          {withOpen === 'not known' ? 'A figure of what is open is not known. ' : ''}
          Keep an eye on the open decisions below.
        </Notice>
      )
  }
}

function CeilingForm({ view, ceiling }: { view: ProgrammeView; ceiling: CeilingSet | undefined }) {
  if (refusal('set-money-ceiling', view.actor))
    return <p className="field-hint">The programme’s lead sets the ceiling.</p>
  const volume = view.state.facts.values.get(annualVolume.key)
  return (
    <CommandForm
      action={setMoneyCeiling}
      formKey={randomUUID()}
      hidden={{ programme: view.code, seen: ceiling?.number ?? 0 }}
      label="Set the ceiling"
    >
      <AnsweredDisclosure summary={ceiling?.amount ? 'Set another ceiling' : 'Set a ceiling'}>
        <div className="form-narrow">
          <NumberBox
            name="amount"
            label="At most"
            hint="In the firm’s currency. Left empty, there is no ceiling any more."
            defaultValue={ceiling?.amount ?? ''}
            optional
          />
          <NumberBox
            name="boards"
            label="For so many boards"
            defaultValue={ceiling?.boards ?? (typeof volume === 'number' ? volume : '')}
            optional
          />
          <NumberBox
            name="lots"
            label="Made in so many lots"
            hint="Left empty, what a lot costs cannot be counted."
            defaultValue={ceiling?.lots ?? ''}
            optional
          />
          <LinesBox name="reason" label="Why" rows={2} required />
          <SubmitButton>Set the ceiling</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
