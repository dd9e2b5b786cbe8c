import { priced } from '@/app/ui/priced'
import { RuledTable } from '@/app/ui/ruled-table'
import { isKnown, lessAmount, sumOf, type Amount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { ExpectedAndActual } from '@/shared/cost/expected-and-actual'

/** What failure was to be expected to cost by the cost table of the process, and what it did. */
export function ExpectedActual({ expected }: { expected: ExpectedAndActual }) {
  const {
    boards,
    expectedHere,
    expectedInService,
    expected: together,
    actualHere,
    actualInService,
    saved,
  } = expected
  const rows = [
    { what: 'Found here', expected: expectedHere, actual: actualHere },
    { what: 'In service, over the whole life', expected: expectedInService, actual: actualInService },
    {
      what: 'Together',
      expected: together,
      actual: sumOf([actualHere, actualInService]),
    },
  ]
  return (
    <>
      <RuledTable
        caption={`Defective joints of ${boards} boards: expected and actual`}
        rows={rows}
        rowKey={({ what }) => what}
        columns={[
          { label: 'Failure', names: true, cell: ({ what }) => what },
          { label: priced('Expected'), set: 'number', cell: (row) => amountInWords(row.expected) },
          { label: priced('So far'), set: 'number', cell: (row) => amountInWords(row.actual) },
          {
            label: 'Saved',
            set: 'number',
            cell: (row) => amountInWords(lessAmount(row.expected, row.actual)),
          },
        ]}
      />
      <p className="field-hint">
        Expected: joints · defects per million · (found · rework + escaped · failing · repair), by the cost
        table of the chosen process. {spentInWords(saved)} Boards in service are still young, so their part is
        not due yet. Rework of joints and returns traced to a solder joint count; what came back for another
        cause does not.
      </p>
    </>
  )
}

const spentInWords = (saved: Amount): string =>
  isKnown(saved)
    ? saved.from < 0 && saved.to > 0
      ? 'Whether more was spent than expected cannot be told: the ranges reach to both sides.'
      : `${saved.from >= 0 ? 'Less' : 'More'} was spent than expected.`
    : 'What was saved is not known while some of it has no figure.'
