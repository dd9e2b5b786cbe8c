import { findingAddress, lotAddress, parameterAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Sign } from '@/app/ui/sign'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import { boardStorageMonths, leadStorageMonths } from '@/shared/plan/parameters/storage'
import { governingRequirement } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { ClockState, LotClock } from '@/shared/storage/lot-clocks'
import { storageClockRule } from '@/shared/rules/control/storage-clock'
import { governingName } from '@/shared/rules/governing-source'

interface StorageClocksProps {
  view: ProgrammeView
  clocks: readonly LotClock[] | undefined
}

/** Lots in store by the day by which they must be soldered, the soonest first. */
export function StorageClocks({ view, clocks }: StorageClocksProps) {
  if (!clocks)
    return (
      <Empty title="No time is specified yet">
        <a href={parameterAddress(view.code, boardStorageMonths.key)}>How long boards may wait</a> and{' '}
        <a href={parameterAddress(view.code, leadStorageMonths.key)}>how long components may</a> decide the
        clock.
      </Empty>
    )
  if (clocks.length === 0)
    return <Empty title="Nothing in store">No lot of boards, coupons or components is on file.</Empty>
  const tested = governingRequirement(reaffirmationAgeMax, view.state.facts.requirements)
  return (
    <Section
      heading="Lots by the day they must be soldered"
      lead={
        <>
          The earlier of the end of their time in store and of what the newest solderability test stands for:{' '}
          {formatQuantity(tested.value, 'days')} ({governingName(tested)}). A retest moves the second, never
          the first. <a href={findingAddress(view.code, storageClockRule.id)}>What was soldered, and when</a>
        </>
      }
    >
      <RuledTable
        caption="Lots in store, the soonest to expire first"
        captionHidden
        rows={clocks}
        rowKey={({ lot }) => lot.id}
        columns={[
          {
            label: 'Lot',
            names: true,
            cell: ({ lot: { code } }) => <a href={lotAddress(view.code, code)}>{code}</a>,
          },
          { label: 'Part', cell: ({ lot: { part, kind } }) => `${part} (${kind})` },
          { label: 'In store since', set: 'shrink', cell: ({ startedOn }) => <Day at={startedOn} /> },
          { label: 'until', set: 'shrink', cell: ({ storedUntil }) => <Day at={storedUntil} /> },
          {
            label: 'Tested',
            set: 'shrink',
            cell: ({ testedOn }) => (testedOn ? <Day at={testedOn} /> : 'never'),
          },
          {
            label: 'stands until',
            set: 'shrink',
            cell: ({ testedUntil }) => (testedUntil ? <Day at={testedUntil} /> : '–'),
          },
          {
            label: 'Last soldered',
            set: 'shrink',
            cell: ({ lastSolderedOn }) => (lastSolderedOn ? <Day at={lastSolderedOn} /> : 'not yet'),
          },
          {
            label: 'Days left',
            set: 'number',
            cell: ({ daysLeft }) => (daysLeft === undefined ? '–' : formatNumber(daysLeft)),
          },
          { label: 'What to do', cell: (clock) => <ToDo clock={clock} /> },
        ]}
      />
    </Section>
  )
}

const SOON_DAYS = 30

/** What a lot's clock asks for before any of it is soldered. */
const TO_DO: Readonly<Record<ClockState, string | undefined>> = {
  'never tested': 'test its solderability before it is soldered',
  'failed its newest test': 'reject it, or have it refinished and tested again',
  'test too old': 'retest before use',
  'past its time in store': 'do not use without a concession',
  'in time': undefined,
}

function ToDo({ clock: { state, daysLeft, useFirst, passedOver } }: { clock: LotClock }) {
  const over = passedOver[passedOver.length - 1]
  const said = [
    TO_DO[state],
    useFirst && 'use first of its part',
    over && `passed over on ${over.day} for lot ${over.insteadLot}`,
  ].filter((text) => text !== false && text !== undefined)
  const urgent = TO_DO[state] !== undefined || (daysLeft !== undefined && daysLeft <= SOON_DAYS)
  if (!urgent) return <>{said.join('; ') || 'in time'}</>
  return (
    <span className="mark">
      <Sign kind={TO_DO[state] === undefined ? 'warning' : 'refusal'} size={16} />
      <strong>{said.join('; ') || 'soon past its day'}</strong>
    </span>
  )
}
