import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { published } from '@/shared/sources/provenance'
import { goldFlashMost, nickelUnderFlashLeast } from '@/shared/plan/limits/finishes'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  boardNickel,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import type { Ruling } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

interface Terms {
  readonly flash: Ruling
  readonly nickel: Ruling
}

interface GoldSurface {
  readonly subject: string
  /** The most gold there may be, µm. */
  readonly goldUm: number
  /** Nickel or tin-nickel under it, µm; zero for none. */
  readonly nickelUm: number
}

export const goldToSolder = rule({
  id: 'gold-to-solder',
  title: 'Gold where solder goes',
  why: 'Gold dissolves in solder within a second and comes back as brittle compound; what was under it is what the joint must wet. It is no coating to solder to, save a flash over sound nickel.',
  stage: 'specification',
  version: 1,
  reads: {
    finish: boardFinish,
    goldLeast: boardFinishLeast,
    goldMost: optional(boardFinishMost),
    boardNickel: optional(boardNickel),
    finishes: leadFinishes,
    flash: goldFlashMost,
    nickel: nickelUnderFlashLeast,
  },
  judge({ finish, goldLeast, goldMost, boardNickel: nickelUm = 0, finishes, flash, nickel }) {
    const terms: Terms = { flash, nickel }
    const parts = [
      ...(BOARD_FINISHES[finish].coating === 'gold'
        ? [judgeBoard({ subject: 'Board', goldUm: goldMost ?? goldLeast, nickelUm }, terms)]
        : []),
      ...finishes.flatMap((row) =>
        LEAD_COATINGS[row.coating].metal === 'gold' ? [judgeLead(row, terms)] : [],
      ),
    ]
    const limit = `No gold, save a flash of at most ${formatQuantity(flash.value, 'µm')} (${flash.document}) over at least ${formatQuantity(nickel.value, 'µm')} of nickel or tin-nickel (${nickel.document})`
    const sources = [
      flash.limit.byDefault.from,
      nickel.limit.byDefault.from,
      published(
        'J-STD-001J: gold to be removed from leads before soldering, with exceptions by thickness and process (secondary copy)',
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
        { label: 'Nickel asked under it', result: formatQuantity(nickel.value, 'µm') },
      ],
      sources,
      notes: [
        'The thickness counted is the most the order allows; where it sets none, the least, so ask for a most.',
        'The wave carries gold of leads into the bath; hand and reflow joints keep it.',
      ],
    })
  },
})

function judgeSurface({ subject, goldUm, nickelUm }: GoldSurface, { flash, nickel }: Terms): Part {
  const gold: Margin = { found: goldUm, limit: flash.value, unit: 'µm', direction: 'at most', guardBand: 0 }
  const under: Margin = {
    found: nickelUm,
    limit: nickel.value,
    unit: 'µm',
    direction: 'at least',
    guardBand: 0,
  }
  const margin = tightest(gold, under)
  return {
    subject,
    verdict: verdictOn(margin),
    found: `${formatQuantity(goldUm, 'µm')} of gold over ${nickelUm > 0 ? `${formatQuantity(nickelUm, 'µm')} of nickel` : 'no nickel'}`,
    margin,
    measured: { gold: measure(goldUm, 'µm'), nickel: measure(nickelUm, 'µm') },
  }
}

function judgeBoard(surface: GoldSurface, terms: Terms): Part {
  const part: Part = { ...judgeSurface(surface, terms), about: { surface: 'board' } }
  if (part.verdict === 'meets') return part
  const remedy: Remedy =
    surface.goldUm > terms.flash.value
      ? { says: 'Choose another finish: this is too much gold to solder to.' }
      : {
          says: `Order at least ${formatQuantity(terms.nickel.value, 'µm')} of nickel under the gold.`,
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
      goldUm: row.coatingMostUm ?? row.coatingUm,
      nickelUm: stops ? (row.barrierUm ?? 0) : 0,
    },
    terms,
  )
  if (part.verdict === 'meets') return part
  return {
    ...part,
    remedy: { says: `${row.component}: have the gold removed by tinning twice, or order tin or tin-lead.` },
  }
}
