import { XyLines } from '@/app/drawing/xy-lines'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { formatQuantity } from '@/shared/quantity/format'
import {
  acceptanceUnder,
  averageSample,
  operatingCurve,
  outgoingLimit,
  planRisk,
} from '@/shared/sampling/plan-risk'
import { planForLot, planInWords, type SamplingPlan } from '@/shared/sampling/sampling-plan'
import { percent } from './plan-in-words'
import { SCHEMES, type PlanQuestion } from './plan-question'

const NAMES: Readonly<Record<SamplingPlan['kind'], string>> = {
  single: 'single',
  double: 'double',
  'zero-acceptance': 'zero',
  variables: 'variables',
}
const STEPS = 60

/** The four kinds of plan for the same lot: what each costs in pieces, and what each lets through. */
export function KindsSideBySide({ question }: { question: PlanQuestion }) {
  const { lotSize, severity, settings } = question
  const acceptable = Number(settings.limit) / 100
  const plans = SCHEMES.map((scheme) => ({
    scheme,
    plan: planForLot(lotSize, severity, { ...settings, scheme }, { measured: true }),
  })).filter(({ scheme, plan }) => plan.kind === scheme)
  const max = Math.min(1, Math.max(...plans.map(({ plan }) => planRisk(plan).oneInTen)) * 1.4)
  const fractions = Array.from({ length: STEPS + 1 }, (_, step) => (max * step) / STEPS)
  return (
    <Section
      heading="The kinds of plan side by side"
      lead="The same lot, level and acceptable quality level; a kind that the tables do not have here is left out."
    >
      <div className="picture-row">
        <XyLines
          title="Operating curves"
          description={`Probability of acceptance against nonconforming pieces, for ${plans.map(({ plan }) => NAMES[plan.kind]).join(', ')}.`}
          across={{ label: 'Bad in the lot', unit: '%' }}
          up={{ label: 'Accepted', unit: '%' }}
          series={plans.map(({ plan }) => ({
            name: NAMES[plan.kind],
            points: operatingCurve(plan, fractions).map(({ fractionNonconforming, acceptance }) => ({
              x: fractionNonconforming * 100,
              y: acceptance * 100,
            })),
          }))}
          {...(acceptable < max && { upright: { x: acceptable * 100, name: `AQL ${percent(acceptable)}` } })}
        />
        <RuledTable
          caption="What each costs and lets through"
          rows={plans}
          rowKey={({ scheme }) => scheme}
          columns={[
            { label: 'Kind', names: true, cell: ({ plan }) => NAMES[plan.kind] },
            {
              label: 'Pieces, on average',
              set: 'number',
              cell: ({ plan }) => formatQuantity(averageSample(plan, acceptable), '1', 3),
            },
            {
              label: 'Sent back at the AQL',
              set: 'number',
              cell: ({ plan }) => percent(1 - acceptanceUnder(plan, acceptable)),
            },
            {
              label: 'Passes one in ten',
              set: 'number',
              cell: ({ plan }) => percent(planRisk(plan).oneInTen),
            },
            {
              label: 'Leaves at worst',
              set: 'number',
              cell: ({ plan }) => percent(outgoingLimit(plan, lotSize).outgoing),
            },
            { label: 'Plan', cell: ({ plan }) => planInWords(plan) },
          ]}
        />
      </div>
      <p className="field-hint">
        Zero acceptance is planned from the lot itself (hypergeometric); its curve is drawn for the process
        that makes the lots (binomial), as the others are. Variables plans hold for readings that are normally
        distributed, and for no others.
      </p>
    </Section>
  )
}
