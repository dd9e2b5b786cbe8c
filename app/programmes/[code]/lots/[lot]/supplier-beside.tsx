import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { Lot } from '@/shared/records/lot'
import type { TestMethodKey } from '@/shared/methods/test-methods'
import { detailOf, type LotPart } from '../lot-parts'

/** The rule whose finding on a lot is what a test here showed, by the test. */
const SHOWN_BY: Readonly<Record<TestMethodKey, string>> = {
  'rotary-dip': 'rotary-dip-wetting-time',
  'dip-and-look': 'dip-and-look-coverage',
  'plated-hole-rise': 'plated-hole-rise',
  'solder-float': 'solder-float-soundness',
  'wetting-balance': 'wetting-balance-curves',
  'plating-thickness': 'plating-thickness',
  'receiving-check': 'receiving-check',
}
const RESULTS = Object.values(SHOWN_BY)

/** What the supplier states beside what was found here. */
export function SupplierBeside({ lot, parts }: { lot: Lot; parts: readonly LotPart[] }) {
  const here = parts.filter(({ rule }) => RESULTS.includes(rule))
  return (
    <Section heading="The supplier’s result and ours">
      <RuledTable
        caption="The supplier’s result and ours"
        captionHidden
        rows={[
          { from: 'The supplier states', message: lot.supplierResult || 'nothing came with the lot' },
          ...(here.length === 0 ? [{ from: 'Found here', message: 'nothing yet' }] : []),
          ...here.map(({ title, part }) => ({
            from: `Found here: ${title.toLowerCase()}${detailOf(part)}`,
            message: part.found,
          })),
        ]}
        rowKey={(_row, position) => position}
        columns={[
          { label: 'From', names: true, cell: ({ from }) => from },
          { label: 'Result', cell: ({ message }) => message },
        ]}
      />
    </Section>
  )
}
