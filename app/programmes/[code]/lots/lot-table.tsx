import { dispositionInWords } from '@/shared/records/lot-identity'
import { lotAddress, tableAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { methodName } from '@/shared/methods/test-methods'
import { partsOfLot, verdictOfLot } from './lot-parts'

/** Lots, the newest first, with what was tried, what the rules say and what was decided. */
export function LotTable({ view, lots }: { view: ProgrammeView; lots: readonly Lot[] }) {
  return (
    <RuledTable
      caption="Lots"
      take={tableAddress(view.code, 'lots')}
      captionHidden
      rows={[...lots].reverse().sort(newestFirst)}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Lot',
          set: 'shrink',
          names: true,
          cell: ({ code }) => <a href={lotAddress(view.code, code)}>{code}</a>,
        },
        { label: 'Part', cell: ({ part, kind }) => `${part} (${kind})` },
        {
          label: 'Supplier',
          cell: ({ supplier, dateCode }) => (dateCode ? `${supplier}, date code ${dateCode}` : supplier),
        },
        { label: 'Quantity', set: 'number', cell: ({ quantity }) => quantity },
        { label: 'Allocated', set: 'number', cell: ({ atWorks }) => atWorks?.allocated ?? 'all' },
        { label: 'Received', set: 'shrink', cell: ({ receivedOn }) => <Day at={receivedOn} /> },
        { label: 'Tests', cell: ({ tests }) => testsInWords(tests) },
        { label: 'Findings', set: 'shrink', cell: (lot) => <Verdict view={view} lot={lot} /> },
        { label: 'Disposition', set: 'shrink', cell: dispositionInWords },
      ]}
    />
  )
}

const newestFirst = (one: Lot, other: Lot): number =>
  one.receivedOn === other.receivedOn ? 0 : one.receivedOn < other.receivedOn ? 1 : -1

function Verdict({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  const verdict = verdictOfLot(partsOfLot(view, lot))
  return verdict ? <VerdictMark verdict={verdict} /> : <>none</>
}

/** "rotary dip, 2 plating thickness". */
function testsInWords(tests: Lot['tests']): string {
  const counts = new Map<string, number>()
  for (const { method } of tests) counts.set(method, (counts.get(method) ?? 0) + 1)
  const said = [...counts].map(([method, count]) => `${count > 1 ? `${count} ` : ''}${methodName(method)}`)
  return said.join(', ') || 'none yet'
}
