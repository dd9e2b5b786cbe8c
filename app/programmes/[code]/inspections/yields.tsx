import { findingAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { yieldSteps } from '@/shared/inspection/yield-steps'
import type { DefectFacts } from './defect-facts'

const CONFIDENCE = 0.95

/** First-pass yield of each step, and rolled over all. */
export function Yields({ view, facts: { tests } }: { view: ProgrammeView; facts: DefectFacts }) {
  const { steps, rolled } = yieldSteps(view.state.facts.records.inspections, tests, CONFIDENCE)
  if (rolled === undefined) return null
  const percent = (share: number) => formatQuantity(share * 100, '%', 4)
  return (
    <Section
      heading="First-pass yield"
      lead={`Rolled over ${steps.length === 1 ? 'the one step' : 'both steps'}: ${percent(rolled)} pass without any rework, if the steps fail independently.`}
      aside={<a href={findingAddress(view.code, 'first-pass-yield')}>Electrical yield against its limit</a>}
    >
      <RuledTable
        caption="Yield by step"
        captionHidden
        rows={steps}
        rowKey={({ step }) => step}
        columns={[
          { label: 'Step', names: true, cell: ({ step }) => step },
          { label: 'Entered', set: 'number', cell: ({ entered }) => formatNumber(entered, 12) },
          { label: 'Right at first', set: 'number', cell: ({ passed }) => formatNumber(passed, 12) },
          { label: 'Yield', set: 'number', cell: ({ share }) => percent(share) },
          {
            label: `Exact bounds, ${CONFIDENCE * 100} %`,
            set: 'number',
            cell: ({ interval }) => `${percent(interval.lower)} to ${percent(interval.upper)}`,
          },
        ]}
      />
    </Section>
  )
}
