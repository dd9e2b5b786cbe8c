import { randomUUID } from 'node:crypto'
import { reworkAddress } from '@/app/addresses'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { Cautions } from '@/app/ui/cautions'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { JointInRework } from '@/shared/inspection/rework-waiting'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { recordHere } from './actions'

interface BenchFormProps {
  view: ProgrammeView
  joint: JointInRework
}

/** The rework of one joint, filled in from the defect that was found there. */
export function ReworkForm({ view, joint: { assembly, joint, kinds } }: BenchFormProps) {
  return (
    <FilledIn
      view={view}
      kind={RECORD_KINDS.rework}
      label={`Rework of ${joint} on ${assembly}`}
      values={{
        doneOn: view.state.facts.today,
        worker: view.actor.name,
        assembly,
        joint,
        defect: kinds[0],
        heats: 1,
      }}
    />
  )
}

/** Another look at one joint, filled in but for what is found. */
export function AgainForm({ view, joint: { assembly, joint, inspection } }: BenchFormProps) {
  const before = view.state.facts.records.inspections.find(({ id }) => id === inspection)
  return (
    <FilledIn
      view={view}
      kind={RECORD_KINDS['re-inspection']}
      label={`Re-inspection of ${joint} on ${assembly}`}
      values={{
        inspectedOn: view.state.facts.today,
        inspector: view.actor.name,
        assembly,
        joint,
        magnification: before?.magnification,
      }}
    />
  )
}

function FilledIn({
  view,
  kind,
  label,
  values,
}: {
  view: ProgrammeView
  kind: RecordKind
  label: string
  values: Readonly<Record<string, unknown>>
}) {
  return (
    <>
      <Cautions of={kind.cautions} />
      <CommandForm
        key={label}
        action={recordHere}
        formKey={randomUUID()}
        hidden={{ programme: view.code, kind: kind.key }}
        label={label}
        className="print-hidden"
      >
        <h3>{label}</h3>
        <div className="form-row">
          {Object.entries(kind.columns).map(([name, column]) => (
            <ColumnField key={name} name={`rows.0.${name}`} column={column} value={values[name]} />
          ))}
        </div>
        <p className="form-actions">
          <SubmitButton>Record it</SubmitButton>
          <a href={reworkAddress(view.code)}>Leave it</a>
        </p>
      </CommandForm>
    </>
  )
}
