import { capitalised } from '@/shared/quantity/capitalised'
import { notFound } from 'next/navigation'
import {
  machineRecordAddress,
  newLessonAddress,
  recordKindAddress,
  recordsAddress,
  trainedPersonAddress,
} from '@/app/addresses'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { CorrectRecord } from '@/app/records/correct-record'
import { WithdrawRecord } from '@/app/records/withdraw-record'
import { Facts } from '@/app/ui/facts'
import { CellValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { correctionsOf } from '@/lib/queries/corrections'
import { recordedIn } from '@/lib/queries/record-authors'
import { refusal } from '@/shared/policy'
import { ownMember } from '@/shared/own-member'
import { fieldsCorrected } from '@/shared/records/correction'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

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
    // Of the works, or of another programme, it is corrected where it was recorded.
    const place = await recordedIn(id)
    const isHere = place.trailId === visit.view.state.programme.id
    const title = capitalised(kind.label)
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
            {isHere && !refusal('correct-record', view.actor, kind) && (
              <CorrectRecord
                kind={kind}
                of={{ programme: view.code }}
                record={id}
                seen={corrections.length}
                values={stands}
              />
            )}
            {isHere && !refusal('withdraw-record', view.actor, kind) && (
              <WithdrawRecord of={{ programme: view.code }} record={id} />
            )}
            {!isHere && kind.keptAt === 'people' && (
              <p>
                It is kept with{' '}
                <a href={trainedPersonAddress(String(stands['worker']), id)}>the people of the works</a>,
                where it is corrected and withdrawn.
              </p>
            )}
            {place.kind === 'machine' && (
              <p>
                It is kept at <a href={machineRecordAddress(place.code, id)}>machine {place.code}</a>, where
                it is corrected and withdrawn.
              </p>
            )}
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
