import { ownMember } from '@/shared/own-member'
import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import {
  newLessonAddress,
  newNonconformityAddress,
  recordAddress,
  recordsAddress,
  tableAddress,
} from '@/app/addresses'
import { ColumnField } from '@/app/forms/column-field'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TableEditor } from '@/app/forms/table-editor'
import { GatesShut } from '@/app/frame/gates-shut'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Caution } from '@/app/ui/caution'
import { Empty } from '@/app/ui/empty'
import { CellValue, setOf } from '@/app/ui/parameter-value'
import { RuledTable, type Column as TableColumn } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { correctionsOf } from '@/lib/queries/corrections'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { tellsOfWork } from '@/shared/gate/shut-gates'
import { insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { refusal } from '@/shared/policy'
import { insulationResistance } from '@/shared/records/kinds/insulation-resistance'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { addRecord } from '../actions'
import { WorkedOutAt } from './worked-out'

/** As many of the newest are listed. */
const SHOWN = 200
/** As many are taken at once. */
const MOST_AT_ONCE = 200

type Row = { readonly id: string } & Readonly<Record<string, unknown>>

export const generateMetadata = programmeTitle<{ kind: string }>(
  ({ code, kind }) => `${ownMember(RECORD_KINDS, kind)?.plural ?? 'Records'}, ${code}`,
)

/** All records of one kind, newest first, and the form its declaration gives. */
export default programmePage<{ kind: string }>(async ({ visit, code, params: { kind: key } }) => {
  if (!Object.hasOwn(RECORD_KINDS, key)) notFound()
  const kind: RecordKind = RECORD_KINDS[key as RecordKindKey]
  const all = (visit.view.state.facts.records.byKind.get(key) ?? []) as readonly Row[]
  const rows = all.slice(-SHOWN)
  const corrected = await correctionsOf(rows.map(({ id }) => id))
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={recordsAddress(code)}
      place={[{ text: 'Records', href: recordsAddress(code) }, { text: kind.plural }]}
      title={kind.plural}
      supplement={kind.help}
      cells={[{ label: 'Recorded', value: all.length }]}
    >
      {(view) => (
        <>
          <WorkedOutAt code={view.code} kind={key as RecordKindKey} />
          {kind.cautions.map((caution) => (
            <Caution key={caution}>{caution}</Caution>
          ))}
          {tellsOfWork(kind) && !refusal('add-record', view.actor, kind) && (
            <GatesShut view={view} stage={kind.stage} what="Work on assemblies is recorded" />
          )}
          {!refusal('add-record', view.actor, kind) && (
            <Section heading={`Add a ${kind.label}`}>
              <CommandForm
                action={addRecord}
                formKey={randomUUID()}
                hidden={{ programme: view.code, kind: key }}
                label={`Add a ${kind.label}`}
              >
                <div className="form-row">
                  {Object.entries(kind.columns).map(([name, column]) => (
                    <ColumnField
                      key={name}
                      name={`rows.0.${name}`}
                      column={column}
                      {...specifiedStart(view, key, name)}
                    />
                  ))}
                </div>
                <SubmitButton>Add it</SubmitButton>
              </CommandForm>
              <CommandForm
                action={addRecord}
                formKey={randomUUID()}
                hidden={{ programme: view.code, kind: key, many: 'yes' }}
                label={`Add several ${kind.plural.toLowerCase()}`}
              >
                <AnsweredDisclosure summary="Add several at once, typed, pasted or loaded">
                  <TableEditor
                    name="rows"
                    caption={kind.plural}
                    columns={kind.columns}
                    rows={[]}
                    maxRows={MOST_AT_ONCE}
                  />
                  <SubmitButton>Add them</SubmitButton>
                </AnsweredDisclosure>
              </CommandForm>
            </Section>
          )}
          {rows.length > 0 ? (
            <Records view={view} kind={kind} rows={rows} corrected={corrected} />
          ) : (
            <Empty title="None yet" />
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})

/** What the programme specifies of a record's own test condition. */
function specifiedStart({ state }: ProgrammeView, kind: string, column: string) {
  if (kind !== insulationResistance.key || column !== 'condition') return {}
  const asked = state.facts.values.get(insulationTest.key)
  return asked === undefined || asked === 'not-asked'
    ? {}
    : { value: asked, hint: 'Filled in from the specification.' }
}

interface RecordsProps {
  view: ProgrammeView
  kind: RecordKind
  rows: readonly Row[]
  /** The ids of those that were corrected. */
  corrected: { has(id: string): boolean }
}

function Records({ view, kind, rows, corrected }: RecordsProps) {
  const columns: TableColumn<Row>[] = Object.entries(kind.columns).map(([name, column], position) => ({
    label: column.label,
    names: position === 0,
    set: setOf(column),
    cell: (row) => <CellValue column={column} value={row[name]} />,
  }))
  const mayCorrect = !refusal('correct-record', view.actor, kind)
  const own: TableColumn<Row>[] = [
    {
      label: 'Record',
      cell: ({ id }) => (
        <>
          <a href={recordAddress(view.code, kind.key, id)}>{mayCorrect ? 'Correct or withdraw' : 'Open'}</a>
          {corrected.has(id) && ' (corrected)'}
        </>
      ),
    },
  ]
  const lesson: TableColumn<Row>[] =
    kind.teaches && !refusal('propose-lesson', view.actor)
      ? [
          {
            label: 'For later programmes',
            cell: ({ id }) => (
              <a className="print-hidden" href={newLessonAddress(view.code, { kind: 'record', key: id })}>
                Propose a lesson
              </a>
            ),
          },
        ]
      : []
  const nonconformity: TableColumn<Row>[] =
    kind.teaches && !refusal('open-nonconformity', view.actor)
      ? [
          {
            label: 'Nonconformity',
            cell: ({ id }) => (
              <a
                className="print-hidden"
                href={newNonconformityAddress(view.code, `record:${kind.key}/${id}`)}
              >
                Open one
              </a>
            ),
          },
        ]
      : []
  return (
    <RuledTable
      caption={kind.plural}
      take={tableAddress(view.code, 'records', kind.key)}
      captionHidden
      narrow="scroll"
      rows={rows.toReversed()}
      rowKey={({ id }) => id}
      columns={[...columns, ...lesson, ...nonconformity, ...own]}
    />
  )
}
