import { notFound } from 'next/navigation'
import { newLessonAddress, recordKindAddress, recordsAddress } from '@/app/addresses'
import { correctRecord } from '@/app/corrections/actions'
import { CorrectionForm } from '@/app/corrections/correction-form'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { ColumnField } from '@/app/forms/column-field'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Facts } from '@/app/ui/facts'
import { CellValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { correctionsOf } from '@/lib/queries/corrections'
import { refusal } from '@/shared/policy'
import { ownMember } from '@/shared/own-member'
import { fieldsCorrected } from '@/shared/records/correction'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { WithdrawRecord } from '../withdraw-record'

export const generateMetadata = programmeTitle<{ kind: string }>(
  ({ code, kind }) => `${ownMember(RECORD_KINDS, kind)?.plural ?? 'Records'}, ${code}`,
)

/** One record: its values as they stand, what was corrected and why, and the form to correct it. */
export default programmePage<{ kind: string; record: string }>(
  async ({ visit, code, params: { kind: key, record: id } }) => {
    const kind: RecordKind | undefined = ownMember(RECORD_KINDS, key)
    const row = visit.view.state.facts.records.byKind.get(key)?.find((entry) => entry.id === id)
    if (!kind || !row) notFound()
    const stands: Readonly<Record<string, unknown>> = { ...row }
    const corrections = (await correctionsOf([id])).get(id) ?? []
    const title = `${kind.label[0]?.toUpperCase()}${kind.label.slice(1)}`
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={recordsAddress(code)}
        place={[
          { text: 'Records', href: recordsAddress(code) },
          { text: kind.plural, href: recordKindAddress(code, key) },
          { text: 'One record' },
        ]}
        title={title}
        supplement={kind.help}
        cells={[{ label: 'Corrected', value: timesInWords(corrections.length) }]}
      >
        {(view) => (
          <>
            <Facts
              facts={Object.entries(kind.columns).map(([name, column]) => ({
                label: column.label,
                value: <CellValue column={column} value={stands[name]} />,
              }))}
            />
            {!refusal('correct-record', view.actor, kind) && (
              <CorrectionForm
                action={correctRecord}
                label="Correct this record"
                seen={corrections.length}
                hidden={{ programme: view.code, record: id, kind: key }}
              >
                <div className="form-row">
                  {Object.entries(kind.columns).map(([name, column]) => (
                    <ColumnField key={name} name={`values.${name}`} column={column} value={stands[name]} />
                  ))}
                </div>
              </CorrectionForm>
            )}
            {!refusal('withdraw-record', view.actor, kind) && <WithdrawRecord code={view.code} record={id} />}
            {corrections.length > 0 && (
              <Section heading="Corrections">
                <CorrectionsShown
                  of={`this ${kind.label}`}
                  corrections={corrections}
                  fieldsOf={(before, after) => fieldsCorrected(kind.columns, before, after)}
                />
              </Section>
            )}
            {kind.teaches && !refusal('propose-lesson', view.actor) && (
              <p className="print-hidden">
                <a href={newLessonAddress(view.code, { kind: 'record', key: id })}>
                  Propose a lesson from it
                </a>
              </p>
            )}
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

const timesInWords = (times: number): string =>
  times === 0 ? 'never' : times === 1 ? 'once' : `${times} times`
