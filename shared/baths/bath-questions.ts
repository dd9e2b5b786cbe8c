import {
  CONTAMINANTS,
  SUMMED_CONTAMINANTS,
  type BathLimits,
  type Contaminant,
} from '@/shared/materials/bath-contaminants'
import type { Limit, GoverningRequirement } from '@/shared/plan/requirement'
import { columnSeries, seriesFrom, type LogSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { governingUnder } from '@/shared/plan/edition-requirement'
import { boundBy, type ProcessWindow } from '@/shared/logs/logged-window'
import type { About } from '@/shared/rules/finding'

/** One thing the analysis is held against: a metal, the sum of five, or the tin. */
export interface BathQuestion {
  readonly subject: string
  readonly about: About
  /** The metal, or what is summed, in words. */
  readonly label: string
  readonly series: LogSeries
  readonly window: ProcessWindow
  readonly governing: GoverningRequirement
  /** Share in the solder added, % by mass. */
  readonly addedPct: number
  readonly ofSum: boolean
}

export interface MetalRequirement {
  readonly metal: Contaminant
  readonly governing: GoverningRequirement
}

/** What rules for each metal: the programme's layers over the chosen edition, or over the strictest. */
export function metalRequirements(
  family: BathLimits['family'],
  inputs: Readonly<Record<string, GoverningRequirement | undefined>>,
  edition: BathLimits | undefined,
): MetalRequirement[] {
  return (Object.keys(CONTAMINANTS) as Contaminant[]).flatMap((metal) => {
    const governing = inputs[`bath-${family}-${metal}-most`]
    if (!governing) return []
    const value = edition?.max[metal]
    if (!edition || value === undefined) return [{ metal, governing }]
    return [
      { metal, governing: governingUnder(governing, { value, authority: 'standard', from: edition.source }) },
    ]
  })
}

export function questionsOn(
  log: Log,
  metals: readonly MetalRequirement[],
  addedOf: (metal: Contaminant) => number,
  sumRequirement: GoverningRequirement | undefined,
): BathQuestion[] {
  const single = metals.map(({ metal, governing }): BathQuestion => {
    const { label, column } = CONTAMINANTS[metal]
    return {
      subject: `Log ${log.code}, ${label.toLowerCase()}`,
      about: { log: log.code, of: metal },
      label: label.toLowerCase(),
      series: columnSeries(log, column),
      window: { max: boundBy(governing), unit: '%' },
      governing,
      addedPct: addedOf(metal),
      ofSum: false,
    }
  })
  if (!sumRequirement) return single
  return [
    ...single,
    {
      subject: `Log ${log.code}, five metals together`,
      about: { log: log.code, of: 'sum of five' },
      label: 'five metals together',
      series: sumSeries(log),
      window: { max: boundBy(sumRequirement), unit: '%' },
      governing: sumRequirement,
      addedPct: SUMMED_CONTAMINANTS.reduce((total, metal) => total + addedOf(metal), 0),
      ofSum: true,
    },
  ]
}

/** The sum of the five summed metals, for analyses that hold all five. */
export const sumSeries = (log: Log): LogSeries =>
  seriesFrom(log, (cell) => {
    let total = 0
    for (const metal of SUMMED_CONTAMINANTS) {
      const share = cell(CONTAMINANTS[metal].column)
      if (share === undefined) return undefined
      total += share
    }
    return Number(total.toPrecision(12))
  })

/** The limits of a family as reads, each under a name of its own. */
export function limitReads<F extends string>(
  _family: F,
  limits: Readonly<Partial<Record<Contaminant, Limit>>>,
) {
  return Object.fromEntries(Object.values(limits).map((one) => [one.key, one])) as Record<
    `bath-${F}-${Contaminant}-most`,
    Limit
  >
}
