import { OperatingCurve } from '@/app/drawing/operating-curve'
import { XyLines } from '@/app/drawing/xy-lines'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import {
  acceptanceUnder,
  operatingCurve,
  outgoingCurve,
  outgoingLimit,
  planRisk,
  riskInWords,
} from '@/shared/sampling/plan-risk'
import { planForLot, planInWords } from '@/shared/sampling/sampling-plan'
import { SEVERITIES } from '@/shared/statistics/sampling/single-plan'
import {
  averageSampleInWords,
  consumersRiskInWords,
  fractionsToDraw,
  outgoingInWords,
  percent,
  producersRiskInWords,
  proofOfAcceptance,
  whyAnotherKind,
} from './plan-in-words'
import { KindsSideBySide } from './kinds-side-by-side'
import type { PlanQuestion } from './plan-question'

/** The plan for a lot, what it lets through, and what an accepted lot is shown to be. */
export function PlanShown({ question, confidence }: { question: PlanQuestion; confidence: number }) {
  const { lotSize, severity, settings } = question
  const plan = planForLot(lotSize, severity, settings, { measured: true })
  const fractions = fractionsToDraw(plan)
  const { oneInTen } = planRisk(plan)
  const acceptable = Number(settings.limit) / 100
  const another = whyAnotherKind(plan, question)
  const average = averageSampleInWords(plan, question)
  const proof = proofOfAcceptance(plan, question, confidence)
  const outgoing = outgoingCurve(plan, lotSize, fractions)
  const worst = outgoingLimit(plan, lotSize)
  return (
    <>
      <Section heading="The plan">
        {another && <Notice kind="info">{another}</Notice>}
        <RuledTable
          caption="The plan in words"
          captionHidden
          rows={[
            { what: 'Try', message: planInWords(plan) },
            ...(average ? [{ what: 'Sample on average', message: average }] : []),
            { what: 'Producer’s risk', message: producersRiskInWords(plan, question) },
            { what: 'Consumer’s risk', message: consumersRiskInWords(plan) },
            ...(proof ? [{ what: 'An accepted lot, at worst', message: proof }] : []),
            { what: 'Outgoing quality', message: outgoingInWords(plan, question) },
          ]}
          rowKey={({ what }) => what}
          columns={[
            { label: 'What', names: true, cell: ({ what }) => what },
            { label: 'In words', cell: ({ message }) => message },
          ]}
        />
      </Section>
      <Section heading="Operating characteristic">
        <div className="picture-row">
          <OperatingCurve
            title="Operating curve"
            plan={planInWords(plan)}
            points={operatingCurve(plan, fractions).map(({ fractionNonconforming, acceptance }) => ({
              fractionDefective: fractionNonconforming,
              probability: acceptance,
            }))}
            marks={[
              ...(acceptable <= fractions.at(-1)!
                ? [
                    {
                      name: `AQL ${percent(acceptable)}`,
                      fractionDefective: acceptable,
                      probability: acceptanceUnder(plan, acceptable),
                    },
                  ]
                : []),
              {
                name: `${percent(oneInTen)}, one in ten`,
                fractionDefective: oneInTen,
                probability: acceptanceUnder(plan, oneInTen),
              },
            ]}
          />
          {worst.outgoing > 0 && (
            <XyLines
              title="Average outgoing quality"
              description="Bad pieces that leave against bad pieces that come in, when rejected lots are inspected whole."
              across={{ label: 'Incoming nonconforming', unit: '%' }}
              up={{ label: 'Bad leaving', unit: '%' }}
              upright={{
                x: worst.fractionNonconforming * 100,
                name: `at worst ${percent(worst.outgoing)} leave`,
              }}
              series={[
                {
                  name: 'leaving',
                  points: outgoing.map(({ fractionNonconforming, outgoing: leaving }) => ({
                    x: fractionNonconforming * 100,
                    y: leaving * 100,
                  })),
                },
              ]}
            />
          )}
        </div>
      </Section>
      <KindsSideBySide question={question} />
      {settings.scheme !== 'zero-acceptance' && (
        <Section
          heading="By the history of the supplier"
          lead="A series of lots moves between these as its lots are accepted or rejected."
        >
          <RuledTable
            caption="The plan under each inspection"
            captionHidden
            rows={SEVERITIES.map((state) => ({
              state,
              plan: planForLot(lotSize, state, settings, { measured: true }),
            }))}
            rowKey={({ state }) => state}
            columns={[
              { label: 'Inspection', names: true, cell: ({ state }) => state },
              { label: 'Plan', cell: (row) => planInWords(row.plan) },
              { label: 'Risk', cell: (row) => riskInWords(row.plan) },
            ]}
          />
        </Section>
      )}
    </>
  )
}
