import { correctInspection } from '@/app/corrections/actions'
import { CorrectionForm } from '@/app/corrections/correction-form'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { ColumnField } from '@/app/forms/column-field'
import { TableEditor } from '@/app/forms/table-editor'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { INSPECTION_COLUMNS } from '@/shared/records/correctable-columns'
import { inspectionFieldsCorrected, type Correction } from '@/shared/records/correction'
import type { Inspection } from '@/shared/records/inspection'
import { DEFECT_COLUMNS } from '../defect-columns'

interface CorrectInspectionProps {
  view: ProgrammeView
  inspection: Inspection
  corrections: readonly Correction[]
}

const MAX_DEFECTS = 500

/** What was corrected of an inspection, and the form to do so, defects included. */
export function CorrectInspection({ view, inspection, corrections }: CorrectInspectionProps) {
  const stands: Readonly<Record<string, unknown>> = { ...inspection }
  return (
    <>
      <CorrectionsShown
        of={`the inspection of ${inspection.assembly}`}
        corrections={corrections}
        fieldsOf={inspectionFieldsCorrected}
      />
      {!refusal('correct-inspection', view.actor) && inspection.defects.length <= MAX_DEFECTS && (
        <CorrectionForm
          action={correctInspection}
          label="Correct this inspection"
          seen={corrections.length}
          hidden={{ programme: view.code, inspection: inspection.id }}
        >
          <div className="form-row">
            {Object.entries(INSPECTION_COLUMNS).map(([name, column]) => (
              <ColumnField key={name} name={`values.${name}`} column={column} value={stands[name]} />
            ))}
          </div>
          <TableEditor
            name="values.defects"
            caption="Defects"
            columns={DEFECT_COLUMNS}
            rows={[...inspection.defects, {}, {}]}
            maxRows={MAX_DEFECTS + 2}
          />
        </CorrectionForm>
      )}
    </>
  )
}
