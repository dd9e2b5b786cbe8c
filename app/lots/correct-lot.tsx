import { correctLot } from '@/app/corrections/actions'
import { CorrectionForm } from '@/app/corrections/correction-form'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { ColumnField } from '@/app/forms/column-field'
import { LinesBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { refusal } from '@/shared/policy'
import { LOT_COLUMNS } from '@/shared/records/correctable-columns'
import { lotFieldsCorrected, type Correction } from '@/shared/records/correction'
import type { Lot } from '@/shared/records/lot'
import type { LotAt } from './lot-at'

interface CorrectLotProps {
  at: LotAt
  lot: Lot
  corrections: readonly Correction[]
}

const { supplierResult, ...CELLS } = LOT_COLUMNS

/** What was noted of the lot and has been set right, and the form to do so. */
export function CorrectLot({ at, lot, corrections }: CorrectLotProps) {
  const may = !refusal('correct-lot', at.actor)
  if (!may && corrections.length === 0) return null
  const stands: Readonly<Record<string, unknown>> = { ...lot, ...lot.storage }
  return (
    <Section
      id="corrections"
      heading="Corrections"
      lead="What was noted when the lot came in, set right with a reason. What stood before is kept."
    >
      {may && (
        <CorrectionForm
          action={correctLot}
          label="Correct this lot"
          seen={corrections.length}
          hidden={{ ...at.names, lot: lot.code }}
        >
          <div className="form-row">
            {Object.entries(CELLS).map(([name, column]) => (
              <ColumnField key={name} name={`values.${name}`} column={column} value={stands[name]} />
            ))}
          </div>
          <LinesBox
            name="values.supplierResult"
            label={supplierResult.label}
            hint="As stated; where none was agreed, say so."
            rows={2}
            defaultValue={lot.supplierResult}
            optional
          />
        </CorrectionForm>
      )}
      <CorrectionsShown of={`lot ${lot.code}`} corrections={corrections} fieldsOf={lotFieldsCorrected} />
    </Section>
  )
}
