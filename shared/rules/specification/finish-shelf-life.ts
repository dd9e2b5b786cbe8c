import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { lacquerStorageMax } from '@/shared/plan/limits/finishes'
import { lacquerStorageGuard } from '@/shared/plan/limits/specification-guards'
import { boardFinish } from '@/shared/plan/parameters/finishes'
import { boardStorageMonths } from '@/shared/plan/parameters/storage'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Judged } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'

export const finishShelfLife = rule({
  id: 'finish-shelf-life',
  title: 'Shelf life of the board finish',
  why: 'Copper tarnishes, silver takes up sulphur, organic films age and gold lets nickel through: a board waits only so long before it is soldered.',
  formula: 'months in store ≤ shortest published life meets, ≤ longest is marginal; bare copper waits none',
  stage: 'specification',
  version: 2,
  reads: {
    finish: boardFinish,
    months: boardStorageMonths,
    lacquer: lacquerStorageMax,
    guard: lacquerStorageGuard,
  },
  judge({ finish: key, months, lacquer, guard }) {
    const finish: BoardFinish = BOARD_FINISHES[key]
    if (finish.coating === 'none') return bareCopper(months)
    if (key === 'lacquer') return underLacquer(months, lacquer, guard.value / 100)
    if (finish.shelfMonths)
      return { ...byPublishedSpread(finish.label, finish.shelfMonths, months), measured: { finish: key } }
    return notApplicable(
      `${finish.label}: no shelf life is published; the growth of compound decides, and is judged apart.`,
    )
  },
})

const bareCopper = (months: number): Judged => ({
  verdict: months > 0 ? 'fails' : 'meets',
  measured: { wait: measure(months, 'months') },
  found: `Bare copper is to wait ${formatQuantity(months, 'months')}; nothing protects it.`,
  limit: 'Bare copper is soldered at once after cleaning.',
  working: [],
  sources: [{ cite: 'Bare copper tarnishes within days', how: 'common practice, no published source' }],
  ...(months > 0 && {
    remedy: {
      message: 'Choose a finish, or solder at once after cleaning.',
      parameter: boardStorageMonths.key,
      value: 0,
    },
  }),
})

function underLacquer(months: number, limit: GoverningRequirement, share: number): Judged {
  const margin = {
    found: months,
    limit: limit.value,
    unit: 'months',
    direction: 'at most',
    guardBand: share * limit.value,
  } as const
  const verdict = verdictOn(margin)
  return {
    verdict,
    found: `Lacquered copper is to wait ${formatQuantity(months, 'months')}.`,
    limit: `At most ${formatQuantity(limit.value, 'months')} (${limit.document})`,
    margin,
    working: [],
    sources: [limit.limit.byDefault.from],
    ...(verdict !== 'meets' && {
      remedy: {
        message: `Hold the boards at most ${formatQuantity(limit.value * (1 - share), 'months')}, or choose tin or tin-lead.`,
        parameter: boardStorageMonths.key,
        value: limit.value * (1 - share),
      },
    }),
  }
}

/** Up to the shortest published life meets; between shortest and longest is marginal; beyond fails. */
function byPublishedSpread(
  label: string,
  life: NonNullable<BoardFinish['shelfMonths']>,
  months: number,
): Judged {
  const margin = {
    found: months,
    limit: life.max,
    unit: 'months',
    direction: 'at most',
    guardBand: life.max - life.min,
  } as const
  const verdict = verdictOn(margin)
  return {
    verdict,
    found: `${label} is to wait ${formatQuantity(months, 'months')}; sources give it ${life.min === life.max ? '' : `${formatQuantity(life.min, '1')} to `}${formatQuantity(life.max, 'months')}.`,
    limit: `At most ${formatQuantity(life.min, 'months')} by the most careful source (${life.source.cite})`,
    margin,
    working: [],
    sources: [life.source],
    ...(verdict !== 'meets' && {
      remedy: {
        message: `Hold the boards at most ${formatQuantity(life.min, 'months')}, or test solderability again before use.`,
        parameter: boardStorageMonths.key,
        value: life.min,
      },
    }),
    notes: ['In a sealed, dry, sulphur-free pack.'],
  }
}
