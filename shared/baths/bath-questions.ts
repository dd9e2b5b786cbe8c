import {
  CONTAMINANTS,
  SUMMED_CONTAMINANTS,
  type BathLimits,
  type Contaminant,
} from '@/shared/materials/bath-contaminants'
import type { Limit, Ruling } from '@/shared/plan/requirement'
import { columnSeries, seriesFrom, type LogSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { rulingUnder } from '@/shared/plan/edition-ruling'
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
  readonly ruling: Ruling
  /** Share in the solder added, % by mass. */
  readonly addedPct: number
  readonly ofSum: boolean
}

export interface MetalRuling {
  readonly metal: Contaminant
  readonly ruling: Ruling
}

/** What rules for each metal: the programme's layers over the chosen edition, or over the strictest. */
export function metalRulings(
  family: BathLimits['family'],
  inputs: Readonly<Record<string, Ruling | undefined>>,
  edition: BathLimits | undefined,
): MetalRuling[] {
  return (Object.keys(CONTAMINANTS) as Contaminant[]).flatMap((metal) => {
    const ruling = inputs[`bath-${family}-${metal}-most`]
    if (!ruling) return []
    const value = edition?.most[metal]
    if (!edition || value === undefined) return [{ metal, ruling }]
    return [{ metal, ruling: rulingUnder(ruling, { value, authority: 'standard', from: edition.source }) }]
  })
}

export function questionsOn(
  log: Log,
  metals: readonly MetalRuling[],
  addedOf: (metal: Contaminant) => number,
  sumRuling: Ruling | undefined,
): BathQuestion[] {
  const single = metals.map(({ metal, ruling }): BathQuestion => {
    const { label, column } = CONTAMINANTS[metal]
    return {
      subject: `Log ${log.code}, ${label.toLowerCase()}`,
      about: { log: log.code, of: metal },
      label: label.toLowerCase(),
      series: columnSeries(log, column),
      window: { most: boundBy(ruling), unit: '%' },
      ruling,
      addedPct: addedOf(metal),
      ofSum: false,
    }
  })
  if (!sumRuling) return single
  return [
    ...single,
    {
      subject: `Log ${log.code}, five metals together`,
      about: { log: log.code, of: 'sum of five' },
      label: 'five metals together',
      series: sumSeries(log),
      window: { most: boundBy(sumRuling), unit: '%' },
      ruling: sumRuling,
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
