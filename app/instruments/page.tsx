import { gaugeAddress, instrumentsAddress, instrumentsTableAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Sign, type SignKind } from '@/app/ui/sign'
import { readInstrumentUse, readInstruments, type InstrumentInProgramme } from '@/lib/queries/instruments'
import { dateAtWorks } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { dueStatus, type DueStatus } from '@/shared/instruments/due-status'
import { AddInstrumentForm, InstrumentForms } from './forms'

export const metadata = { title: 'Instruments – Liquidus' }

/** The register of measuring instruments, with what is due first. */
export default async function InstrumentsPage() {
  const person = await requirePerson(instrumentsAddress())
  const [instruments, uses] = await Promise.all([readInstruments(), readInstrumentUse(person)])
  const today = dateAtWorks(new Date())
  const mayChange = !refusal('add-instrument', { ...person, departments: [], leads: false })
  const count = (status: DueStatus) =>
    instruments.filter((instrument) => dueStatus(instrument, today) === status).length
  return (
    <DeskSheet
      person={person}
      at={instrumentsAddress()}
      title="Instruments"
      supplement="A reading taken with an instrument out of calibration is flagged wherever it is used"
      cells={[
        { label: 'In the register', value: instruments.length },
        { label: 'Overdue', value: count('overdue') },
        { label: 'Due in 30 days', value: count('due soon') },
      ]}
    >
      {instruments.length > 0 ? (
        <RuledTable
          caption="Instruments"
          captionHidden
          take={instrumentsTableAddress()}
          rows={instruments}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Tag', names: true, cell: ({ tag }) => tag },
            { label: 'Measures', cell: ({ measures }) => measures },
            { label: 'Calibrated', set: 'shrink', cell: ({ calibratedOn }) => <Day at={calibratedOn} /> },
            { label: 'Due', set: 'shrink', cell: ({ dueOn }) => <Day at={dueOn} /> },
            {
              label: 'Status',
              set: 'shrink',
              cell: (instrument) => <Status status={dueStatus(instrument, today)} />,
            },
            { label: 'Certificate', cell: ({ certificate }) => certificate },
            {
              label: 'Used or studied in',
              cell: ({ id, tag }) => (
                <UsedIn tag={tag} uses={uses.filter(({ instrumentId }) => instrumentId === id)} />
              ),
            },
            ...(mayChange
              ? [
                  {
                    label: 'Change',
                    cell: (instrument: (typeof instruments)[number]) => (
                      <InstrumentForms instrument={instrument} />
                    ),
                  },
                ]
              : []),
          ]}
        />
      ) : (
        <Empty title="No instruments yet">An administrator keeps the register.</Empty>
      )}
      {mayChange && <AddInstrumentForm />}
    </DeskSheet>
  )
}

/** Where its readings and its gauge studies are. */
function UsedIn({ tag, uses }: { tag: string; uses: readonly InstrumentInProgramme[] }) {
  if (uses.length === 0) return <>–</>
  return uses.map(({ programme, studied }, at) => (
    <span key={programme}>
      {at > 0 && ', '}
      <a href={gaugeAddress(programme, tag)}>{programme}</a>
      {studied && ' (gauge study)'}
    </span>
  ))
}

const SIGNS: Readonly<Record<DueStatus, SignKind | undefined>> = {
  overdue: 'refusal',
  'due soon': 'warning',
  current: undefined,
  'out of use': undefined,
}

/** What needs somebody is set apart by weight and a sign, not by colour alone. */
function Status({ status }: { status: DueStatus }) {
  const sign = SIGNS[status]
  if (!sign) return <>{status}</>
  return (
    <span className="mark">
      <Sign kind={sign} size={16} />
      <strong>{status}</strong>
    </span>
  )
}
