import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { NumberBox, TextBox } from '@/app/forms/fields'
import { governingFor, valueOf } from '@/app/pictures/value-of'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { magnificationFor } from '@/shared/materials/inspection-magnification'
import { magnificationMax } from '@/shared/plan/limits/assessment-inspection'
import { trainingNoticeMin, trainingValidMax } from '@/shared/plan/limits/control-people'
import { componentPlaces } from '@/shared/plan/parameters/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { judgePeople } from '@/shared/rules/people-current'
import { outlineOf } from '../outline'
import type { PlanRead } from '../plan-read'
import { recordAtBench } from './actions'
import { AssemblyBox, BenchKeys, RecordButton } from './bench-keys'
import { DefectRows } from './defect-rows'
import type { Repeated } from './repeated'
import { recordsOfKind } from '@/shared/records/records-of-kind'

interface BenchEntryProps {
  view: ProgrammeView
  repeated: Repeated
  /** The board as its files have it, where they were confirmed. */
  plan: PlanRead | undefined
}

/** The form of one assembly. Enter records it; what rarely changes is folded away. */
export function BenchEntry({ view, repeated, plan }: BenchEntryProps) {
  const { inspections } = view.state.facts.records
  const { assembly, inspectedOn, inspector, magnification, jointsSeen } = repeated
  return (
    <CommandForm
      key={`${assembly} ${inspections.length}`}
      action={recordAtBench}
      formKey={randomUUID()}
      hidden={{ programme: view.code }}
      label="Record an inspection"
      className="form-stack bench"
    >
      <BenchKeys>
        <div className="bench-head">
          <AssemblyBox value={assembly} />
          <RecordButton />
        </div>
        <Disclosure
          summary={
            <>
              {jointsSeen || 'No'} joints inspected at {magnification || '…'} ×, by {inspector},{' '}
              <Day at={inspectedOn} />
            </>
          }
          open={!jointsSeen || !magnification}
          printed={false}
        >
          <div className="form-row">
            <NumberBox
              name="inspections.0.jointsSeen"
              label="Joints inspected"
              unit="joints"
              defaultValue={jointsSeen}
              required
            />
            <NumberBox
              name="inspections.0.magnification"
              label="Magnification"
              unit="×"
              hint={powerAsked(view)}
              defaultValue={magnification}
              required
            />
            <TextBox
              name="inspections.0.inspector"
              label="Inspector"
              hint={qualified(view, inspector, inspectedOn)}
              defaultValue={inspector}
              required
            />
            <TextBox
              name="inspections.0.inspectedOn"
              type="date"
              label="On"
              defaultValue={inspectedOn}
              required
            />
          </div>
        </Disclosure>
        <DefectRows
          kinds={DEFECT_KINDS}
          frequent={frequentKinds(view)}
          outline={outlineOf(view)}
          plan={plan}
          components={plan ? [] : placesOf(view)}
        />
        <TextBox name="inspections.0.note" label="Note on the assembly" optional />
        <RecordButton />
      </BenchKeys>
    </CommandForm>
  )
}

function powerAsked(view: ProgrammeView): string | undefined {
  const holes = valueOf(view, leadHoles)
  if (!holes) return undefined
  const narrowest = Math.min(...holes.map(({ landMm }) => landMm))
  const { min, max } = magnificationFor(narrowest)
  return `Lands of ${narrowest} mm ask for ${min} to ${max} ×; at most ${governingFor(view, magnificationMax).value} ×.`
}

/** Whether the inspector is current today, in the words of the rule that will ask it. */
function qualified(view: ProgrammeView, worker: string, on: string): string {
  const training = recordsOfKind(view.state.facts.records, 'training')
  const { verdict, found } = judgePeople([{ worker, skill: 'inspection', on }], training, {
    validMax: governingFor(view, trainingValidMax),
    notice: governingFor(view, trainingNoticeMin),
  })
  return verdict === 'meets' ? `${worker} is qualified today for visual inspection.` : found
}

/** The kinds found most here, to be at hand. */
function frequentKinds(view: ProgrammeView): string[] {
  const counts = new Map<string, number>()
  for (const { defects } of view.state.facts.records.inspections)
    for (const { kind } of defects) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...DEFECT_KINDS].sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0))
}

const placesOf = (view: ProgrammeView) =>
  (valueOf(view, componentPlaces) ?? []).flatMap(({ component, xMm, yMm }) =>
    xMm === undefined || yMm === undefined ? [] : [{ component, xMm, yMm }],
  )
