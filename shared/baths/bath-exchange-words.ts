import { CONTAMINANTS, SUMMED_CONTAMINANTS } from '@/shared/materials/bath-contaminants'
import { exchangeMassKg } from '@/shared/physics/bath-exchange'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { cellAt } from '@/shared/logs/log-series'
import type { WorkingLine } from '@/shared/rules/finding'
import type { BathQuestion } from './bath-questions'
import { guardBandOf } from '@/shared/logs/logged-window'

/** The share to bring a bath to by exchange, so that it meets and is not marginal at once. */
export const exchangeTargetPct = ({ window }: BathQuestion): number =>
  (window.max?.value ?? Number.NaN) - guardBandOf(window)

/** How much solder to exchange for new; what is added up from an analysis may come to a little more than the bath, in words; in kilograms where the bath's mass is known. */
export function exchangeInWords(
  foundPct: number,
  question: BathQuestion,
  bathKg: number | undefined,
): string {
  const targetPct = exchangeTargetPct(question)
  if (!(question.addedPct < targetPct))
    return `Exchange solder for new solder certified well below ${formatQuantity(targetPct, '%')} of it; with more in it no exchange reaches the limit.`
  const share = exchangeMassKg({
    bathKg: 1,
    foundPct: Math.min(100, foundPct),
    targetPct,
    addedPct: question.addedPct,
  })
  const amount =
    bathKg === undefined
      ? `${formatNumber(share * 100, 3)} % of the bath`
      : `${formatNumber(share * bathKg, 4)} kg of ${formatNumber(bathKg)} kg`
  return `Take out ${amount} and fill up with new solder of ${formatQuantity(question.addedPct, '%')}: the bath comes to ${formatQuantity(targetPct, '%')}. Stir, and analyse again.`
}

export function exchangeWorking(question: BathQuestion, bathKg: number | undefined): WorkingLine[] {
  const { series, window, addedPct } = question
  const found = series.values[series.values.length - 1]
  const targetPct = exchangeTargetPct(question)
  if (found === undefined || !window.max || found <= window.max.value || !(addedPct < targetPct)) return []
  const mass = bathKg ?? 100
  const kg = exchangeMassKg({ bathKg: mass, foundPct: Math.min(100, found), targetPct, addedPct })
  return [
    {
      label: `${question.subject}: solder to exchange`,
      formula: 'm = M · (c − c(target)) / (c − c(added))',
      numbers: `${formatNumber(mass)} · (${formatNumber(found)} − ${formatNumber(targetPct)}) / (${formatNumber(found)} − ${formatNumber(addedPct)})`,
      result: bathKg === undefined ? `${formatNumber(kg)} % of the bath` : formatQuantity(kg, 'kg'),
    },
  ]
}

/** The sum of the five summed metals, written out for each bath. */
export const sumWorking = (questions: readonly BathQuestion[]): WorkingLine[] =>
  questions
    .filter(({ ofSum }) => ofSum)
    .flatMap(({ subject, series }) => {
      const { log, rows, values } = series
      const newest = values[values.length - 1]
      if (newest === undefined) return []
      const row = rows[rows.length - 1]
      return [
        {
          label: subject,
          formula: 'Cu + Au + Cd + Zn + Al',
          numbers: SUMMED_CONTAMINANTS.map((metal) => cellAt(log, CONTAMINANTS[metal].column, row)).join(
            ' + ',
          ),
          result: formatQuantity(newest, '%'),
        },
      ]
    })
