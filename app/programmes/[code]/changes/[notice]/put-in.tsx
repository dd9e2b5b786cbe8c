import { randomUUID } from 'node:crypto'
import { changeNoticeAddress } from '@/app/addresses'
import { proposeRequirement, proposeWithdrawal } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox } from '@/app/forms/fields'
import { Button } from '@/app/ui/button'
import { ChoiceField } from '@/app/ui/field'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { findLimit, findParameter } from '@/shared/catalogue/standard-plan'
import type { ChangeNotice } from '@/shared/gate/change-notice'
import { lapsedByParameter } from '@/shared/gate/lapsed-signatures'
import { specificationFactsFor } from '@/shared/gate/live-turns'
import type { PlannedItem } from '@/shared/gate/programme-state'
import type { Parameter } from '@/shared/plan/parameter'
import type { Limit } from '@/shared/plan/requirement'
import { refusal } from '@/shared/policy'
import { ReviseForm } from '../../items/[item]/revise-form'
import { DemandBoxes } from '../../limits/[limit]/demand-boxes'

interface PutInProps {
  view: ProgrammeView
  notice: ChangeNotice
  wanted: { revise?: string; limit?: string }
}

/** Where changes are put into the notice: choose what to change, then its own form. */
export function PutIn({ view, notice, wanted }: PutInProps) {
  if (refusal('propose-change', view.actor)) return null
  const parameter = findParameter(wanted.revise ?? '')
  const limit = findLimit(wanted.limit ?? '')
  return (
    <Section
      id="put-in"
      heading="Put a change in"
      lead="Anybody of the programme may propose; each department answers."
    >
      <Choose
        view={view}
        notice={notice}
        name="revise"
        label="Value to change"
        chosen={parameter?.key}
        choicesOf={({ definition }) => definition.parameters}
      />
      {parameter && <ValueForm view={view} notice={notice} parameter={parameter} />}
      <Choose
        view={view}
        notice={notice}
        name="limit"
        label="Limit to state a requirement on"
        chosen={limit?.key}
        choicesOf={({ definition }) => definition.limits}
      />
      {limit && <RequirementForm code={view.code} notice={notice} limit={limit} />}
      <WithdrawalForm view={view} notice={notice} />
    </Section>
  )
}

interface ChooseProps {
  view: ProgrammeView
  notice: ChangeNotice
  name: 'revise' | 'limit'
  label: string
  chosen: string | undefined
  choicesOf: (item: PlannedItem) => readonly { readonly key: string; readonly label: string }[]
}

function Choose({ view, notice, name, label, chosen, choicesOf }: ChooseProps) {
  const choices = view.state.items.flatMap((item) =>
    choicesOf(item).map(({ key, label: text }) => ({
      value: key,
      text: `${item.definition.title}: ${text}`,
    })),
  )
  return (
    <form
      action={`${changeNoticeAddress(view.code, notice.number)}#put-in`}
      className="form-narrow form-stack"
    >
      <ChoiceField
        name={name}
        label={label}
        defaultValue={chosen ?? ''}
        choices={[{ value: '', text: 'choose' }, ...choices]}
      />
      <Button type="submit">Open its form</Button>
    </form>
  )
}

function ValueForm({
  view,
  notice,
  parameter,
}: {
  view: ProgrammeView
  notice: ChangeNotice
  parameter: Parameter
}) {
  const { key, label, help, shape } = parameter
  const proposed = notice.changes.find(({ change }) => change.kind === 'value' && change.parameter === key)
  const revision = view.state.revisions.get(key)
  return (
    <ReviseForm
      formKey={randomUUID()}
      programme={view.code}
      item=""
      notice={notice.number}
      parameter={{ key, label, help, shape }}
      value={proposed?.change.kind === 'value' ? proposed.change.value : revision?.value}
      open
      proposed={undefined}
      seen={revision?.number ?? 0}
      facts={specificationFactsFor([parameter], view.state.facts)}
      reach={lapsedByParameter(key, view.judgement)}
    />
  )
}

function RequirementForm({ code, notice, limit }: { code: string; notice: ChangeNotice; limit: Limit }) {
  return (
    <CommandForm
      action={proposeRequirement}
      formKey={randomUUID()}
      hidden={{
        programme: code,
        notice: notice.number,
        'change.kind': 'requirement',
        'change.limit': limit.key,
      }}
      label={`Propose a requirement on ${limit.label}`}
      className="form-narrow"
    >
      <DemandBoxes limit={limit} within="change." />
      <LinesBox name="reason" label="Why" rows={2} required />
      <SubmitButton>Put it in the notice</SubmitButton>
    </CommandForm>
  )
}

function WithdrawalForm({ view, notice }: { view: ProgrammeView; notice: ChangeNotice }) {
  const { requirements } = view.state.facts
  if (requirements.length === 0) return null
  return (
    <CommandForm
      action={proposeWithdrawal}
      formKey={randomUUID()}
      hidden={{ programme: view.code, notice: notice.number, 'change.kind': 'withdrawal' }}
      label="Propose to withdraw a requirement"
      className="form-narrow"
    >
      <ChoiceBox
        name="change.requirement"
        label="Requirement to withdraw"
        choices={requirements.map((entry) => ({
          value: entry.id,
          text: changeInWords({ kind: 'requirement', ...entry }),
        }))}
      />
      <LinesBox name="reason" label="Why it should not stand any more" rows={2} required />
      <SubmitButton>Put its withdrawal in the notice</SubmitButton>
    </CommandForm>
  )
}
