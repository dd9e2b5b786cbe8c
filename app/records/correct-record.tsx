import { correctRecord } from '@/app/corrections/actions'
import { CorrectionForm } from '@/app/corrections/correction-form'
import { ColumnField } from '@/app/forms/column-field'
import type { RecordKind } from '@/shared/records/record-kind'

interface CorrectRecordProps {
  kind: RecordKind
  /** Names the programme, or what of the works, that keeps it. */
  of: Readonly<Record<string, string>>
  record: string
  /** How often it was corrected, as shown. */
  seen: number
  /** It may ask first what would turn in the programmes of the works. */
  previewed?: boolean
  /** As it stands. */
  values: Readonly<Record<string, unknown>>
}

/** Other values for a record, with the reason. */
export const CorrectRecord = ({ kind, of, record, seen, previewed, values }: CorrectRecordProps) => (
  <CorrectionForm
    action={correctRecord}
    label="Correct this record"
    seen={seen}
    {...(previewed && { previewed })}
    hidden={{ ...of, record, kind: kind.key }}
  >
    <div className="form-row">
      {Object.entries(kind.columns).map(([name, column]) => (
        <ColumnField key={name} name={`values.${name}`} column={column} value={values[name]} />
      ))}
    </div>
  </CorrectionForm>
)
