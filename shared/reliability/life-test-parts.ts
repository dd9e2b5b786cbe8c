import { groupedBy } from '@/shared/grouped-by'
import { formatNumber } from '@/shared/quantity/format'
import type { ShapeRange, SpecimenRun } from '@/shared/reliability/demonstration/wear-out-shown'
import type { LifeSpecimen, LifeTestFit } from '@/shared/reliability/life-test-fit'
import type { Part } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import type { Interval } from '@/shared/statistics/intervals/interval'

/** Of the bounds of a test's own fit, two-sided. */
export const FIT_CONFIDENCE = 0.9

/** Whether the bounds of a shape reach into those presumed. */
export const overlap = ({ lower, upper }: Interval, { min, max }: ShapeRange): boolean =>
  upper >= min && lower <= max

/** What each test's own Weibull fit says. */
export const weibullNotes = (fits: readonly LifeTestFit[]): string[] =>
  fits.flatMap(({ test, fit, bounds, fitTest, failures, onePercentAt }) =>
    fit && bounds && onePercentAt
      ? [
          `${test}: ${failures} failures fit a Weibull of shape ${formatNumber(fit.shape, 3)} (${formatNumber(bounds.shape.lower, 2)} to ${formatNumber(bounds.shape.upper, 2)}), 1 % failed by ${formatNumber(onePercentAt.life, 3)} test cycles (${formatNumber(onePercentAt.lower, 3)} to ${formatNumber(onePercentAt.upper, 3)}), each with ${FIT_CONFIDENCE * 100} % confidence.${fitInWords(fitTest)}`,
        ]
      : [],
  )

const fitInWords = (fitTest: LifeTestFit['fitTest']): string => {
  if (fitTest === undefined) return ''
  return fitTest.chance < 0.05
    ? ` A Weibull does not fit well (Mann’s test, chance ${formatNumber(fitTest.chance, 2)}): look for two causes.`
    : ` Mann’s test finds nothing against it (chance ${formatNumber(fitTest.chance, 2)}).`
}

/** One part a test; the target is judged for all tests together. */
export function partsOfTests(specimens: readonly LifeSpecimen[], runs: readonly SpecimenRun[]): Part[] {
  const tests = groupedBy(
    specimens.map(({ test }, index) => ({ test, run: runs[index]! })),
    ({ test }) => test,
    ({ run }) => run,
  )
  return [...tests].map(([subject, own]) => {
    const failed = own.filter((one) => one.failed).length
    const [shortest, longest] = [
      Math.min(...own.map(({ lives }) => lives)),
      Math.max(...own.map(({ lives }) => lives)),
    ]
    return {
      subject,
      verdict: 'not applicable',
      measured: {
        tested: count(own.length),
        failed: count(failed),
        shortest: measure(shortest, '1'),
        longest: measure(longest, '1'),
      },
      found: `${failed} of ${own.length} failed, run for ${formatNumber(shortest, 3)} to ${formatNumber(longest, 3)} lives; the target is judged for all tests together.`,
    }
  })
}
