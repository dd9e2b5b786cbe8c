import { BOARD_FINISHES, type BoardFinish, type BoardFinishKey } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { published } from '@/shared/sources/provenance'
import { goldFlashMax, nickelUnderFlashMin, nickelUnderFlashMax } from '@/shared/plan/limits/finishes'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
  boardNickel,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

interface Terms {
  readonly flash: GoverningRequirement
  readonly nickel: GoverningRequirement
  readonly nickelMax: GoverningRequirement
}

interface GoldSurface {
  readonly subject: string
  /** The least gold ordered, µm. */
  readonly minUm: number
  /** The most gold there may be, µm; undefined where the order sets none. */
  readonly maxUm: number | undefined
  /** Nickel or tin-nickel under it, µm; zero for none, undefined where nobody has said. */
  readonly nickelUm: number | undefined
}

export const goldToSolder = rule({
  id: 'gold-to-solder',
  title: 'Gold where solder goes',
  why: 'Gold dissolves in solder within a second and comes back as brittle compound; what was under it is what the joint must wet. It is no coating to solder to, save a flash over sound nickel.',
  formula: 'gold, at the most the order allows, ≤ flash, over nickel inside its window',
  stage: 'specification',
  version: 2,
  reads: {
    finish: boardFinish,
    goldMin: boardFinishMin,
    goldMax: optional(boardFinishMax),
    boardNickel: optional(boardNickel),
    finishes: leadFinishes,
    flash: goldFlashMax,
    nickel: nickelUnderFlashMin,
    nickelMax: nickelUnderFlashMax,
  },
  judge({ finish, goldMin, goldMax, boardNickel: nickelUm, finishes, flash, nickel, nickelMax }) {
    const terms: Terms = { flash, nickel, nickelMax }
    const parts = [
      ...(BOARD_FINISHES[finish].coating === 'gold'
        ? [
            judgeBoard(
              {
                subject: 'Board',
                minUm: goldMin,
                maxUm: maxGoldUm(finish, goldMin, goldMax),
                nickelUm,
              },
              terms,
            ),
          ]
        : []),
      ...finishes.flatMap((row) =>
        LEAD_COATINGS[row.coating].metal === 'gold' ? [judgeLead(row, terms)] : [],
      ),
    ]
    const limit = `No gold, save a flash of at most ${formatQuantity(flash.value, 'µm')} (${flash.document}) over ${formatQuantity(nickel.value, '1')} to ${formatQuantity(nickelMax.value, 'µm')} of nickel or tin-nickel (${nickel.document})`
    const sources = [
      flash.limit.byDefault.from,
      nickel.limit.byDefault.from,
      published(
        'J-STD-001J: gold to be removed from leads before soldering, with exceptions by thickness and process, as SMT007 Magazine, May 2025, page 69, tells it',
      ),
    ]
    if (parts.length === 0) {
      return notApplicable('No gold where solder goes.')
    }
    return judgedByParts({
      parts,
      noun: 'gold surfaces',
      limit,
      working: [
        { label: 'Flash allowed', result: formatQuantity(flash.value, 'µm') },
        {
          label: 'Nickel asked under it',
          result: `${formatQuantity(nickel.value, '1')} to ${formatQuantity(nickelMax.value, 'µm')}`,
        },
      ],
      sources,
      notes: [
        'The thickness counted is the most the order allows. Immersion gold ends by itself: where its order sets no most, that of its standard is counted.',
        'The wave carries gold of leads into the bath; hand and reflow joints keep it.',
      ],
    })
  },
})

/** The most gold a finish may have: as ordered, or where immersion ends it by itself. */
export function maxGoldUm(
  key: BoardFinishKey,
  minUm: number,
  orderedUm: number | undefined,
): number | undefined {
  const finish: BoardFinish = BOARD_FINISHES[key]
  if (orderedUm !== undefined) return orderedUm
  return finish.window?.maxUm === undefined ? undefined : Math.max(minUm, finish.window.maxUm)
}

function judgeSurface({ subject, minUm, maxUm, nickelUm }: GoldSurface, terms: Terms): Part {
  const { flash, nickel, nickelMax } = terms
  const goldUm = maxUm ?? minUm
  const gold: Margin = { found: goldUm, limit: flash.value, unit: 'µm', direction: 'at most', guardBand: 0 }
  const measured = {
    gold: measure(goldUm, 'µm'),
    ...(nickelUm !== undefined && { nickel: measure(nickelUm, 'µm') }),
  }
  const over =
    nickelUm === undefined
      ? ''
      : nickelUm > 0
        ? ` over ${formatQuantity(nickelUm, 'µm')} of nickel`
        : ' over no nickel'
  const found = `${formatQuantity(goldUm, 'µm')} of gold${over}`
  const missing = [
    ...(maxUm === undefined ? ['the order sets no most of gold'] : []),
    ...(nickelUm === undefined ? ['the nickel under it is not specified'] : []),
  ]
  if (verdictOn(gold) !== 'fails' && missing.length > 0)
    return { subject, verdict: 'undetermined', measured, found: `${found}; ${missing.join(', and ')}` }
  const under: Margin[] =
    nickelUm === undefined
      ? []
      : [
          { found: nickelUm, limit: nickel.value, unit: 'µm', direction: 'at least', guardBand: 0 },
          { found: nickelUm, limit: nickelMax.value, unit: 'µm', direction: 'at most', guardBand: 0 },
        ]
  const margin = tightest(gold, ...under)
  return { subject, verdict: verdictOn(margin), found, margin, measured }
}

function judgeBoard(surface: GoldSurface, terms: Terms): Part {
  const part: Part = { ...judgeSurface(surface, terms), about: { surface: 'board' } }
  if (part.verdict === 'meets') return part
  const remedy: Remedy =
    (surface.maxUm ?? surface.minUm) > terms.flash.value
      ? { message: 'Choose another finish: this is too much gold to solder to.' }
      : {
          message: `Order ${formatQuantity(terms.nickel.value, '1')} to ${formatQuantity(terms.nickelMax.value, 'µm')} of nickel under the gold.`,
          parameter: boardNickel.key,
          value: terms.nickel.value,
        }
  return { ...part, remedy }
}

function judgeLead(row: LeadFinish, terms: Terms): Part {
  if (row.goldRemoved) {
    return { subject: row.component, verdict: 'meets', found: 'gold is removed before soldering' }
  }
  const stops = row.barrier === 'nickel' || row.barrier === 'tin-nickel'
  const part = judgeSurface(
    {
      subject: row.component,
      minUm: row.coatingUm,
      maxUm: row.coatingMostUm,
      nickelUm: stops ? row.barrierUm : 0,
    },
    terms,
  )
  if (part.verdict === 'meets') return part
  return {
    ...part,
    remedy: {
      message: `${row.component}: have the gold removed by tinning twice, or order tin or tin-lead.`,
    },
  }
}
