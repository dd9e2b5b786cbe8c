import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { GROWTH_LAWS, GROWTH_UNDER, PEAK_FACTOR } from '@/shared/materials/growth-laws'
import { TIN_PER_CU6SN5 } from '@/shared/materials/metals'
import { compoundUm, growthBand } from '@/shared/physics/intermetallic'
import { HOURS_PER_MONTH } from '@/shared/quantity/calendar'
import { freeTinMin, tinCoatingMax } from '@/shared/plan/limits/finishes'
import { freeTinGuard } from '@/shared/plan/limits/specification-guards'
import { boardFinish, boardFinishMin, boardNickel, leadFinishes } from '@/shared/plan/parameters/finishes'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { judgeStored, type Stored } from '@/shared/storage/stored-coat'
import { growsCompound, storedCoats } from '@/shared/storage/stored-coats'

export const storageLife = rule({
  id: 'storage-life',
  title: 'Solderable coating after storage',
  why: 'Tin and copper grow into compound in store, faster the warmer. When the compound has drawn the tin out of the coating, solder no longer wets it.',
  formula:
    'h − 0.692 · x/s ≥ least; x = √(x₀² + k · t), k the fastest of the laws whose author can be followed, times 1.5² for the peaks',
  stage: 'specification',
  version: 3,
  reads: {
    finish: boardFinish,
    boardUm: boardFinishMin,
    nickel: optional(boardNickel),
    finishes: leadFinishes,
    boardMonths: boardStorageMonths,
    leadMonths: leadStorageMonths,
    temperature: storageTemperature,
    left: freeTinMin,
    max: tinCoatingMax,
    guard: freeTinGuard,
  },
  judge({ finish: key, boardUm, nickel = 0, finishes, boardMonths, leadMonths, temperature, ...limits }) {
    const { left, max, guard } = limits
    const finish: BoardFinish = BOARD_FINISHES[key]
    const stored = storedCoats({
      finish: key,
      boardUm,
      nickelUm: nickel,
      finishes,
      boardMonths,
      leadMonths,
    })
    const limit = `At least ${formatQuantity(left.value, 'µm')} of sound coating when it is soldered (${left.document}), by the fastest growth whose author can be followed`
    const sources = [
      ...Object.values(GROWTH_LAWS).map((law) => law.source),
      PEAK_FACTOR.source,
      TIN_PER_CU6SN5.source,
      left.limit.byDefault.from,
    ]
    if (stored.length === 0)
      return notApplicable('Nothing in store is coated with tin or solder thick enough to grow compound.')
    const parts = stored.map((each) =>
      judgeStored(each, temperature, { minUm: left.value, guardUm: guard.value, maxUm: max.value }),
    )
    const deciding = decidingPart(parts)
    const worst = stored[deciding ? parts.indexOf(deciding) : 0]
    return judgedByParts({
      parts,
      noun: 'stored coatings',
      limit,
      working: worst ? workingOf(worst, temperature) : [],
      sources,
      notes: [
        'Published energies run from 55 to 128 kJ/mol and rates differ severalfold: the span is shown, and the fastest growth whose author can be followed decides. A fit in circulation without an author is shown beside it.',
        'Solderability is lost before the tin: compound stands up in peaks, which the fastest growth counts; coatings thin at edges, and oxide joins in.',
        ...(stored.some(({ under }) => under === 'nickel')
          ? [
              'Over nickel the compound grows more slowly by a law of its own, for which no full set of constants is published: the copper law is kept, on the safe side.',
            ]
          : []),
        ...(stored.some(({ under }) => under === 'iron-nickel')
          ? [
              `Leads of iron-nickel do not grow compound as copper does (${GROWTH_UNDER['iron-nickel'].source.cite}): copper’s law is the most it can be, so a lead that fails by it is open, not failed.`,
            ]
          : []),
        ...(finish.coating === 'tin' && !growsCompound(key)
          ? ['Immersion tin is too thin for this calculation; its published shelf life decides.']
          : []),
      ],
    })
  },
})

function workingOf({ subject, coat, months }: Stored, temperatureC: number): WorkingLine[] {
  const band = growthBand(temperatureC)
  const hours = months * HOURS_PER_MONTH
  const compounds = [band.slowest, band.fitted, band.fastest].map((k) => compoundUm(k, hours, coat.firstUm))
  const um = (value: number): string => formatQuantity(value, 'µm', 3)
  return [
    {
      label: `Growth constant at ${formatQuantity(temperatureC, '°C')}`,
      formula:
        'k = k₂₅ · exp(E/R · (1/298.15 − 1/T)), k₂₅ = 0.635²/672 µm²/h on electroplated tin, E = 55.4 or 65.4 kJ/mol, whichever is faster, times 1.5² for the peaks; fit: ln k = 14.81 − 6784.7/T',
      numbers: `T = ${formatQuantity(temperatureC + 273.15, 'K')}`,
      result: `${formatNumber(band.slowest, 3)} to ${formatNumber(band.fastest, 3)}, fit ${formatNumber(band.fitted, 3)} µm²/h`,
    },
    {
      label: `Compound on ${subject} after ${formatQuantity(months, 'months')}`,
      formula: 'x = √(x₀² + k · t)',
      numbers: `x₀ = ${um(coat.firstUm)}, t = ${formatQuantity(hours, 'h')}`,
      result: compounds.map(um).join(', '),
    },
    {
      label: 'Coating left',
      formula: 'h − 0.692 · x/s, s the share of tin by volume',
      numbers: `h = ${um(coat.coatingUm)}, s = ${formatQuantity(coat.tinShare, '1', 3)}`,
      result: compounds
        .map((x) => um(Math.max(0, coat.coatingUm - (TIN_PER_CU6SN5.value * x) / coat.tinShare)))
        .join(', '),
    },
  ]
}
