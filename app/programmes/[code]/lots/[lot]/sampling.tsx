import { samplingAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { samplingOfLot, samplingSpecified, type SamplingOfLot } from '@/shared/sampling/sampling-of-lot'

/** The plan for each test of the lot, by its size and its supplier's history, and what the sample proves. */
export function Sampling({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  const { facts } = view.state
  const sampled = samplingOfLot(facts, lot)
  return (
    <Section heading="Sampling">
      {sampled.length > 0 ? (
        <RuledTable
          caption="Sampling of the lot"
          captionHidden
          rows={sampled}
          rowKey={({ label }) => label}
          columns={[
            {
              label: 'Test',
              names: true,
              cell: ({ label, asked }) => (asked ? label : `${label} (not asked for)`),
            },
            { label: 'Inspection', set: 'shrink', cell: ({ inspection }) => inspection.severity },
            { label: 'Plan', cell: (one) => <Plan view={view} lot={lot} sampled={one} /> },
            { label: 'Risk', cell: ({ riskMessage }) => riskMessage },
            {
              label: 'So far',
              cell: ({ sample, proofMessage }) => (
                <>
                  {sample
                    ? `${sample.tested} tested, ${sample.nonconforming} nonconforming. ${decided(sample)} `
                    : ''}
                  {proofMessage ?? 'Nothing is proved yet.'}
                </>
              ),
            },
          ]}
        />
      ) : (
        <p>
          {samplingSpecified(facts)
            ? 'No sampled test is asked of this lot or made on it.'
            : 'The sampling is not specified yet: inspection level, acceptable quality level, conditions of the tests, and the lots to be evaluated.'}
        </p>
      )}
    </Section>
  )
}

function Plan({
  view,
  lot,
  sampled: { planMessage, plan },
}: {
  view: ProgrammeView
  lot: Lot
  sampled: SamplingOfLot
}) {
  const asked = new URLSearchParams({
    lot: String(lot.quantity),
    type: plan.kind,
    ...('severity' in plan && { state: plan.severity }),
  })
  return (
    <>
      {planMessage}. <a href={`${samplingAddress(view.code)}?${asked}`}>Its operating curve</a>
    </>
  )
}

function decided({ outcome }: NonNullable<SamplingOfLot['sample']>): string {
  if (outcome.decided !== undefined) return `The sample is ${outcome.decided}.`
  return `${outcome.stillToTest} more to try.`
}
