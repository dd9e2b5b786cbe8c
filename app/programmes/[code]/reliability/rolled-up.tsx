import { findingAddress } from '@/app/addresses'
import { RatesOnScale } from '@/app/drawing/rates-on-scale'
import { Section } from '@/app/ui/section'
import { Working } from '@/app/ui/working'
import { Disclosure } from '@/app/ui/disclosure'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { RateKnown } from '@/shared/reliability/roll-up'
import type { Known } from './known'

const NAMES: Record<RateKnown['from'], string> = {
  prediction: 'Prediction',
  'life test': 'Life tests',
  service: 'Service',
}

/** Everything known of the board's failure rate against the target, and what remains to be shown. */
export function RolledUp({ known: { target, rates }, code }: { known: Known; code: string }) {
  const shown = rates.find(({ basis, status }) => basis === 'shown' && status === 'within the target')
  const beyond = rates.find(({ basis, status }) => basis === 'shown' && status === 'beyond the target')
  return (
    <Section heading="Against the target" lead={verdict(shown, beyond)}>
      <RatesOnScale
        title="What is known of the board’s failure rate"
        allowed={target.boardFit}
        rates={rates.map(({ from, basis, ...rate }) => ({
          ...rate,
          name: NAMES[from],
          assumed: basis === 'assumed',
        }))}
      />
      <ul className="prose">
        {rates.map(({ from, upper, survival, basis, toShow }) => (
          <li key={from}>
            {NAMES[from]}: {basis === 'assumed' ? 'would leave' : 'shows at least'}{' '}
            {formatQuantity(survival * 100, '%', 5)} of boards outliving service (
            {formatQuantity(upper, 'FIT', 3)} a board at most).
            {toShow &&
              ` Still to show: ${formatNumber(Math.ceil(toShow.amount), 4)} ${toShow.unit} without a further failure.`}
          </li>
        ))}
      </ul>
      <Disclosure summary="Working">
        <Working
          lines={[
            {
              label: 'Allowed rate of a board',
              formula: '−ln R/H · 10⁹',
              numbers: `R = ${target.survival}, H = ${formatNumber(target.lifeH, 7)} h`,
              result: formatQuantity(target.boardFit, 'FIT'),
            },
            {
              label: 'Life test brought to a board’s rate, upper bound',
              formula: 'χ²(C; 2r + 2)/2/(joints run through a life, Σ joints · lives^β) · joints/H · 10⁹',
              numbers: `C = ${target.confidence}, ${target.joints} joints, β from ${target.wearOutShapes.min} to ${target.wearOutShapes.max}, the worst; ${target.lifeCycles === undefined ? 'cycles of a life not specified' : `${formatNumber(target.lifeCycles, 6)} cycles`}`,
              result: rateOf(rates, 'life test'),
            },
            {
              label: 'Service, upper bound',
              formula: 'χ²(C; 2r + 2)/2/(board-hours) · 10⁹',
              numbers: `C = ${target.confidence}`,
              result: rateOf(rates, 'service'),
            },
          ]}
          sources={[
            { cite: 'NIST/SEMATECH e-Handbook 8.3.1.1: chi-square test length', how: 'published' },
            { cite: 'Garwood, Biometrika 28 (1936): exact bounds of a rate', how: 'computed' },
          ]}
        />
        <p>
          Each has its finding: <a href={findingAddress(code, 'joint-budget')}>prediction</a>,{' '}
          <a href={findingAddress(code, 'reliability-demonstrated')}>life test</a>,{' '}
          <a href={findingAddress(code, 'field-returns')}>service</a>.
        </p>
      </Disclosure>
    </Section>
  )
}

function verdict(shown: RateKnown | undefined, beyond: RateKnown | undefined): string {
  if (beyond) return `The target is contradicted by ${NAMES[beyond.from].toLowerCase()}.`
  if (shown) return `The target is shown by ${NAMES[shown.from].toLowerCase()}, under what is assumed below.`
  return 'The target is not shown yet: it rests on what is assumed.'
}

const rateOf = (rates: readonly RateKnown[], from: RateKnown['from']): string => {
  const rate = rates.find((one) => one.from === from)
  return rate ? formatQuantity(rate.upper, 'FIT') : 'nothing recorded'
}
