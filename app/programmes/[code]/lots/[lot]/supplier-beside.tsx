import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import type { Lot } from '@/shared/records/lot'
import type { LotPart } from '../lot-parts'

/** Rules whose finding on a lot is what a test here showed. */
const RESULTS: readonly string[] = [
  'rotary-dip-wetting-time',
  'dip-and-look-coverage',
  'plated-hole-rise',
  'solder-float-soundness',
  'wetting-balance-curves',
  'plating-thickness',
  'receiving-check',
]

/** What the supplier states beside what was found here. */
export function SupplierBeside({ lot, parts }: { lot: Lot; parts: readonly LotPart[] }) {
  const here = parts.filter(({ rule }) => RESULTS.includes(rule))
  return (
    <Section heading="The supplier’s result and ours">
      <Facts
        facts={[
          { label: 'The supplier states', value: lot.supplierResult || 'nothing came with the lot' },
          {
            label: 'Found here',
            value:
              here.length === 0
                ? 'nothing yet'
                : here.map(({ rule, title, part }, position) => (
                    <p key={`${rule} ${position}`}>
                      {title}: {part.found}
                    </p>
                  )),
          },
        ]}
      />
    </Section>
  )
}
