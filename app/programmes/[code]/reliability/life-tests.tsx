import { recordKindAddress } from '@/app/addresses'
import { WeibullPlot } from '@/app/drawing/weibull-plot'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { estimateInWords, formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Known } from './known'

/** Each life test with its fit, on Weibull paper where something failed. */
export function LifeTests({ known: { tests, target }, code }: { known: Known; code: string }) {
  const href = recordKindAddress(code, 'life-test')
  return (
    <Section
      heading="Life tests"
      lead="Fitted by likelihood, specimens still running counted as such (NIST/SEMATECH e-Handbook 8.4.1). Where fewer than two failed, the characteristic life has a lower bound at the presumed shape (Weibayes)."
      aside={<a href={href}>Records of life tests</a>}
    >
      {tests.length === 0 ? (
        <Empty title="No life test is on record">
          A prediction compares designs; only a test shows joints. <a href={href}>Record specimens</a>.
        </Empty>
      ) : (
        <RuledTable
          caption="Life tests"
          captionHidden
          rows={tests}
          rowKey={({ test }) => test}
          columns={[
            { label: 'Test', names: true, cell: ({ test }) => test },
            {
              label: 'Failed',
              set: 'number',
              cell: ({ failures, specimens }) => `${failures} of ${specimens}`,
            },
            { label: 'Joints', set: 'number', cell: ({ joints }) => formatNumber(joints, 7) },
            { label: 'Shape', set: 'number', cell: ({ fit }) => (fit ? formatNumber(fit.shape, 3) : '–') },
            {
              label: 'Characteristic life',
              set: 'number',
              cell: ({ fit, scaleBound }) =>
                fit
                  ? formatQuantity(fit.scale, 'cycles')
                  : `at least ${formatQuantity(scaleBound?.scale ?? 0, 'cycles')}`,
            },
            {
              label: '1 % failed by',
              set: 'number',
              cell: ({ onePercentAt }) =>
                onePercentAt === undefined ? '–' : estimateInWords(onePercentAt.life, onePercentAt),
            },
            {
              label: 'Service lives run',
              set: 'number',
              cell: ({ exposure, joints }) =>
                target.lifeCycles === undefined
                  ? '–'
                  : `${formatNumber(exposure / joints / target.lifeCycles, 3)} a joint`,
            },
          ]}
        />
      )}
      <div className="picture-row">
        {tests
          .filter(({ ranks }) => ranks.length > 0)
          .map(({ test, ranks, lives, fit }) => (
            <WeibullPlot
              key={test}
              title={`${test} on Weibull paper`}
              ranks={ranks}
              suspensions={lives.suspensions}
              fit={fit}
              confidencePct={90}
            />
          ))}
      </div>
    </Section>
  )
}
