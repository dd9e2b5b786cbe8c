import { BOARD_FINISHES, type BoardFinishKey } from '@/shared/materials/board-finishes'
import { LEAD_AGAINST_WHISKERS, LEAD_COATINGS, WHISKER_MEASURES } from '@/shared/materials/lead-finishes'
import { fromMemory } from '@/shared/sources/provenance'
import { boardFinish, leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import type { ValueOf } from '@/shared/plan/parameter'
import { productClass } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Verdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'

type Grade = ValueOf<typeof productClass>

export const whiskerMitigation = rule({
  id: 'whisker-mitigation',
  title: 'Tin whiskers',
  why: 'Pure tin can grow hair-thin crystals for years that short its neighbours; what solder covers is safe, what stays bare is not.',
  formula:
    'no bright tin; matte tin over nickel, or thick and annealed; class 3, and leads of iron-nickel, with lead',
  stage: 'specification',
  version: 3,
  reads: { finish: boardFinish, finishes: leadFinishes, grade: productClass },
  judge({ finish, finishes, grade }) {
    const { nickelUnderlayerUm, matteThicknessUm, anneal } = WHISKER_MEASURES
    const parts: Part[] = [
      ...(BOARD_FINISHES[finish].pureTin ? [judgeBoard(finish)] : []),
      ...finishes.flatMap((row) =>
        LEAD_COATINGS[row.coating].whiskers === 'no' ? [] : [judgeLead(row, grade)],
      ),
    ]
    const limit = `No bright tin; matte tin over nickel of ${formatQuantity(nickelUnderlayerUm.value, 'µm')}, or at least ${formatQuantity(matteThicknessUm.value, 'µm')} annealed ${anneal.message}; class 3 better at least ${formatQuantity(LEAD_AGAINST_WHISKERS.minPct, '%')} lead`
    const sources = [
      LEAD_AGAINST_WHISKERS.source,
      nickelUnderlayerUm.source,
      matteThicknessUm.source,
      anneal.source,
      WHISKER_MEASURES.ironNickel.source,
      fromMemory(
        'NASA Goddard Space Flight Center, tin whisker home page, conformal coat experiments: 2 mil slows whiskers without preventing them',
      ),
    ]
    if (parts.length === 0) return notApplicable('Nothing is coated with pure tin.')
    return judgedByParts({
      parts,
      noun: 'pure tin surfaces',
      limit,
      working: [],
      sources,
      notes: [
        'Measures lessen whiskers; none but lead is known to prevent them. Thicknesses differ between editions.',
        'At least 3 % of lead and at most 0.1 % cannot both hold: which law or rule applies is settled under the restriction of lead.',
      ],
    })
  },
})

/** No measure is known of a board: as a lead without one, of class 1 it is close to the limit at best. */
const judgeBoard = (finish: BoardFinishKey): Part => ({
  subject: 'Board',
  about: { surface: 'board' },
  verdict: 'marginal',
  measured: { finish },
  found: `${BOARD_FINISHES[finish].label}: pure tin stays bare where no solder covers it`,
})

function judgeLead(row: LeadFinish, grade: Grade): Part {
  const coating = LEAD_COATINGS[row.coating]
  const { nickelUnderlayerUm, matteThicknessUm } = WHISKER_MEASURES
  const nickel = row.barrier === 'nickel' && (row.barrierUm ?? 0) >= nickelUnderlayerUm.value
  const annealedThick = row.annealed === true && row.coatingUm >= matteThicknessUm.value
  if (coating.whiskers === 'bright') {
    return {
      subject: row.component,
      verdict: grade === '1' ? 'marginal' : 'fails',
      measured: { coating: row.coating },
      found: `${coating.label}: the most whisker-prone coating`,
      remedy: {
        message: `${row.component}: order matte tin over nickel, or tin-lead, or have the leads dipped in solder.`,
      },
    }
  }
  const measures = nickel
    ? 'over nickel'
    : annealedThick
      ? 'thick and annealed'
      : 'without a measure against whiskers'
  const measured = nickel || annealedThick
  // What drives them on iron-nickel is the mismatch of expansion, which no measure on the coating relieves.
  const strict = grade === '3' || row.base === 'iron-nickel'
  const verdict: Verdict = measured
    ? grade === '3' && row.base === 'iron-nickel'
      ? 'fails'
      : strict
        ? 'marginal'
        : 'meets'
    : grade === '1'
      ? 'marginal'
      : 'fails'
  return {
    subject: row.component,
    verdict,
    measured: { coating: row.coating, base: row.base, overNickel: nickel, annealedThick },
    found: `${coating.label}, ${measures}${row.base === 'iron-nickel' ? '; on iron-nickel every change of temperature strains it' : ''}`,
    ...(verdict !== 'meets' && {
      remedy: {
        message:
          grade === '3' || row.base === 'iron-nickel'
            ? `${row.component}: order tin-lead, or have the leads dipped in it; or accept matte tin over nickel by concession.`
            : `${row.component}: order at least ${formatQuantity(nickelUnderlayerUm.value, 'µm')} of nickel under the tin, or ${formatQuantity(matteThicknessUm.value, 'µm')} annealed.`,
      },
    }),
  }
}
