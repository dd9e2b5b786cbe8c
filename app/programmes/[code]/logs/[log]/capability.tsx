import { capitalised } from '@/shared/quantity/capitalised'
import { limitAddress } from '@/app/addresses'
import { Histogram } from '@/app/drawing/histogram'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { capabilityConfidenceMin, capabilityMin } from '@/shared/plan/limits/control-charts'
import { governingRequirement } from '@/shared/plan/requirement'
import { estimateInWords, formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { capabilityOf, FEWEST_FOR_CAPABILITY, newestStretch } from '@/shared/charts/capability-of-log'
import { limitedLogs, limitedReads } from '@/shared/charts/limited-logs'
import { windowInWords } from '@/shared/logs/logged-window'
import { inputsOf } from '@/shared/rules/inputs-of'
import { expectedOutsidePerMillion } from '@/shared/statistics/capability/expected-outside'
import type { Interval } from '@/shared/statistics/intervals/interval'

/** What a log's spread leaves of its window, and how surely that is known. Nothing where no window is specified. */
export function Capability({ view, log }: { view: ProgrammeView; log: Log }) {
  const { facts } = view.state
  const inputs = inputsOf(limitedReads, facts)
  const limited = inputs && limitedLogs(inputs).find(({ series }) => series.log.code === log.code)
  if (!limited) return null
  const { what, series, window, charting } = limited
  const stretch = newestStretch(series, charting)
  const { values, since } = stretch
  const sureness = governingRequirement(capabilityConfidenceMin, facts.requirements).value
  const heading = `Capability of the ${what}`
  const found = capabilityOf(stretch, window, charting, Math.min(0.9999, sureness / 100))
  if (!found)
    return (
      <Section heading={heading} lead={`Window: ${windowInWords(window)}`}>
        <p>
          {values.length < FEWEST_FOR_CAPABILITY
            ? `${values.length} readings${sinceWhat(since)}, of the ${FEWEST_FOR_CAPABILITY} that a capability needs.`
            : 'The readings show no spread: the instrument is too coarse to tell a capability.'}
        </p>
      </Section>
    )
  const { study, signals } = found
  const { shortTerm, longTerm } = study
  const asked = governingRequirement(capabilityMin, facts.requirements)
  const limits = { lower: window.min?.value, upper: window.max?.value }
  const outside = expectedOutsidePerMillion(limits, { mean: study.mean, sigma: longTerm.sigma.sigma })
  const said = (value: number) => formatNumber(value, 3)
  return (
    <Section
      id="capability"
      heading={heading}
      lead={`Window: ${windowInWords(window)} ${since === undefined ? 'All ' : ''}${study.readings} readings${sinceWhat(since)}; intervals at ${sureness} %.`}
    >
      {!study.speaksForTheFuture && (
        <Notice kind="warning" title="The log is unstable">
          {signals} {signals === 1 ? 'signal' : 'signals'} of the chosen run rules: the figures tell what was,
          and promise nothing. Find the causes, then take readings again.
        </Notice>
      )}
      <Histogram
        title={`${log.code}: ${what} against its window`}
        across={{ label: capitalised(what), unit: window.unit }}
        values={values}
        limits={{ atLeast: limits.lower, atMost: limits.upper }}
        normal={{ mean: study.mean, sigma: longTerm.sigma.sigma }}
      />
      <Facts
        facts={[
          { label: 'Mean', value: formatQuantity(study.mean, window.unit, 5) },
          {
            label: 'Spread from reading to reading, σ',
            value: formatQuantity(shortTerm.sigma.sigma, window.unit, 3),
          },
          {
            label: 'Spread of all readings, s',
            value: formatQuantity(longTerm.sigma.sigma, window.unit, 3),
          },
          ...(shortTerm.cp === undefined
            ? []
            : [{ label: 'Cp', value: inWords(shortTerm.cp, shortTerm.cpInterval) }]),
          { label: 'Cpk', value: inWords(shortTerm.cpk, shortTerm.cpkInterval) },
          {
            label: 'Cpk, shown to be at least',
            value: (
              <>
                {said(shortTerm.cpkLowerBound)}; asked:{' '}
                <a href={limitAddress(view.code, capabilityMin.key)}>{formatNumber(asked.value)}</a>
              </>
            ),
          },
          ...(longTerm.cp === undefined
            ? []
            : [{ label: 'Pp', value: inWords(longTerm.cp, longTerm.cpInterval) }]),
          { label: 'Ppk', value: inWords(longTerm.cpk, longTerm.cpkInterval) },
          {
            label: 'Outside, if the spread is normal',
            value: formatQuantity(outside.below + outside.above, 'per million', 3),
          },
        ]}
      />
      <p className="field-hint">
        The curve is the normal spread of all readings (s). Cp and Cpk rest on the moving range of successive
        readings, Pp and Ppk on all of them. NIST/SEMATECH e-Handbook 6.1.6; interval of Cpk: A. F. Bissell,
        Applied Statistics 39 (1990) 331, from memory.
      </p>
    </Section>
  )
}

const sinceWhat = (since: string | undefined): string => (since === undefined ? '' : ` since “${since}”`)

const inWords = (index: number, interval: Interval | undefined): string =>
  interval ? estimateInWords(index, interval) : formatNumber(index, 3)
