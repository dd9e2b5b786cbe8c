import { ownMember } from '@/shared/own-member'
import { notFound } from 'next/navigation'
import {
  newLessonAddress,
  newNonconformityAddress,
  recordAddress,
  recordsAddress,
  tableAddress,
  trainedPersonAddress,
  worksPeopleAddress,
} from '@/app/addresses'
import { GatesShut } from '@/app/frame/gates-shut'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { AddRecords } from '@/app/records/add-records'
import { Cautions } from '@/app/ui/cautions'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { CellValue, setOf } from '@/app/ui/parameter-value'
import { RuledTable, type Column as TableColumn } from '@/app/ui/ruled-table'
import { correctionsOf } from '@/lib/queries/corrections'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { tellsOfWork } from '@/shared/gate/shut-gates'
import { insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { refusal } from '@/shared/policy'
import { insulationResistance } from '@/shared/records/kinds/insulation-resistance'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { WorkedOutAt } from './worked-out'

/** As many of the newest are listed. */
const SHOWN = 200

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
          <Cautions of={kind.cautions} />
          {tellsOfWork(kind) && !refusal('add-record', view.actor, kind) && (
            <GatesShut view={view} stage={kind.stage} what="Work on assemblies is recorded" />
          )}
          {kind.keptAt === 'people' ? (
            <KeptAtTheWorks kind={kind} />
          ) : (
            !refusal('add-record', view.actor, kind) && (
              <AddRecords
                kind={kind}
                of={{ programme: view.code }}
                startOf={(column) => specifiedStart(view, key, column)}
              />
            )
          )}
          {rows.length > 0 ? (
            <Records view={view} kind={kind} rows={rows} corrected={corrected} />
          ) : (
            <Empty title="None yet">{firstOf(kind, refusal('add-record', view.actor, kind))}</Empty>
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

/** Why nothing is added here, and where it is. */
const KeptAtTheWorks = ({ kind }: { kind: RecordKind }) => (
  <Notice kind="info" title={`${kind.plural} is kept once for all programmes`}>
    What stands here is read from <a href={worksPeopleAddress()}>the people of the works</a>, where it is
    added and corrected. Records of an earlier version stay in the programme they were made in.
  </Notice>
)

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
  const placeOf = ({ id, ...values }: Row): string =>
    kind.keptAt === 'people'
      ? trainedPersonAddress(String(values['worker']), id)
      : recordAddress(view.code, kind.key, id)
  const own: TableColumn<Row>[] = [
    {
      label: 'Record',
      cell: (row) => (
        <>
          <a href={placeOf(row)}>{mayCorrect && kind.keptAt !== 'people' ? 'Correct or withdraw' : 'Open'}</a>
          {corrected.has(row.id) && ' (corrected)'}
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

/** How the first record of a kind comes to be. */
const firstOf = ({ keptAt }: RecordKind, refused: string | undefined): string =>
  keptAt === 'people'
    ? 'The people of the works hold them, for every programme.'
    : (refused ?? 'Fill in the form above for the first; rows can be pasted from a spreadsheet.')
