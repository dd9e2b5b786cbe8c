import { ALLOYS } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { GOLD_SOURCE } from '@/shared/materials/metals'
import { goldMassFraction, goldMassMg, goldThicknessAtUm } from '@/shared/physics/gold-fraction'
import { annulusMm3, leadGirthMm } from '@/shared/physics/joint-volume'
import { goldFractionMost } from '@/shared/plan/limits/finishes'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { holeWall, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepBelow } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'
import { finishesByComponent } from '@/shared/plan/finishes-by-component'
import { holeOf } from '@/shared/holes/joint-row'

/** Within a tenth of the limit is marginal. */
const GUARD_SHARE = 0.1

interface Terms {
  readonly boardMm: number
  readonly wallUm: number
  readonly densityGcm3: number
  /** Gold on the wall of the hole, µm. */
  readonly wallGoldUm: number
  readonly finishOf: (component: string) => LeadFinish | undefined
  readonly limitPct: number
}

export const goldFraction = rule({
  id: 'gold-fraction',
  title: 'Gold in each joint',
  why: 'Solder with more than a few per cent of gold turns brittle and cracks under shock and temperature swings.',
  stage: 'specification',
  version: 1,
  reads: {
    holes: leadHoles,
    wall: holeWall,
    boardThickness,
    alloy: solderAlloy,
    finish: boardFinish,
    goldLeast: boardFinishLeast,
    goldMost: optional(boardFinishMost),
    finishes: leadFinishes,
    most: goldFractionMost,
  },
  judge({ holes, wall, boardThickness: boardMm, alloy, finish, goldLeast, goldMost, finishes, most }) {
    const terms: Terms = {
      boardMm,
      wallUm: wall,
      densityGcm3: ALLOYS[alloy].densityGcm3,
      wallGoldUm: BOARD_FINISHES[finish].coating === 'gold' ? (goldMost ?? goldLeast) : 0,
      finishOf: finishesByComponent(finishes),
      limitPct: most.value,
    }
    const parts = holes.map((row) => partOrContradiction(row.component, () => judgeRow(row, terms)))
    const deciding = decidingPart(parts)
    const row = deciding && holes[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'kinds of joint',
      limit: `At most ${formatQuantity(most.value, '%')} of gold by mass (${most.document})`,
      working: row && deciding.margin ? workingOf(row, terms) : [],
      sources: [most.limit.byDefault.from, GOLD_SOURCE, ALLOYS[alloy].source],
      notes: [
        'Counted on the lead and the wall within the board, with the smallest hole and the largest lead; the fillets, which would thin the gold, are left out. All gold is taken to dissolve.',
        'A limit in per cent by volume is another number: 3 % by mass is about 1.3 % by volume in tin-lead.',
      ],
    })
  },
})

/** The gold and the solder of one joint, gold surfaces apart. */
function contents(row: LeadHole, terms: Terms) {
  const finish = terms.finishOf(row.component)
  if (!finish) {
    throw new RangeError(`${row.component} is not among the lead finishes: add a row with this name.`)
  }
  const hole = holeOf(row, terms.wallUm)
  const lead = {
    shape: row.leadShape,
    widthMm: row.leadMm + row.leadToleranceMm,
    thicknessMm: row.leadThicknessMm === undefined ? undefined : row.leadThicknessMm + row.leadToleranceMm,
  }
  const leadAreaMm2 = leadGirthMm(lead) * terms.boardMm
  const goldUm =
    LEAD_COATINGS[finish.coating].metal === 'gold' && !finish.goldRemoved
      ? (finish.coatingMostUm ?? finish.coatingUm)
      : 0
  const layers = [
    { areaMm2: leadAreaMm2, thicknessUm: goldUm },
    { areaMm2: row.plated ? Math.PI * hole.leastMm * terms.boardMm : 0, thicknessUm: terms.wallGoldUm },
  ]
  const goldMg = goldMassMg(layers)
  // Without gold there is nothing to dilute, so the room for solder need not be worked out.
  const solderMm3 =
    goldMg === 0
      ? undefined
      : annulusMm3({ holeMm: hole.leastMm, boardMm: terms.boardMm, landMm: row.landMm, lead })
  return { leadAreaMm2, goldUm, goldMg, solderMm3 }
}

function judgeRow(row: LeadHole, terms: Terms): Part {
  const { goldMg, goldUm, solderMm3, leadAreaMm2 } = contents(row, terms)
  if (solderMm3 === undefined)
    return { subject: row.component, verdict: 'meets', found: 'no gold in the joint' }
  const found = goldMassFraction(goldMg, solderMm3, terms.densityGcm3) * 100
  const part = partOn({
    subject: row.component,
    measured: { gold: measure(goldMg, 'mg'), solder: measure(solderMm3 * terms.densityGcm3, 'mg') },
    found: `${formatQuantity(goldMg, 'mg', 3)} of gold in ${formatQuantity(solderMm3 * terms.densityGcm3, 'mg', 3)} of solder: ${formatQuantity(found, '%', 3)}`,
    margin: {
      found,
      limit: terms.limitPct,
      unit: '%',
      direction: 'at most',
      guardBand: GUARD_SHARE * terms.limitPct,
    },
  })
  if (part.verdict === 'meets' || goldUm === 0) return part
  const aim = (terms.limitPct / 100) * (1 - GUARD_SHARE)
  const atMostUm = stepBelow(goldThicknessAtUm(aim, solderMm3, leadAreaMm2, terms.densityGcm3), 0.01)
  const limitGold =
    terms.wallGoldUm === 0 && atMostUm > 0
      ? `hold the gold on the lead to ${formatQuantity(atMostUm, 'µm')}, or `
      : ''
  return {
    ...part,
    remedy: { says: `${row.component}: ${limitGold}have the gold removed before soldering.` },
  }
}

function workingOf(row: LeadHole, terms: Terms): WorkingLine[] {
  const { goldMg, goldUm, solderMm3, leadAreaMm2 } = contents(row, terms)
  if (solderMm3 === undefined) return []
  return [
    {
      label: `Gold at ${row.component}`,
      formula: 'Σ area · thickness · 19.3 g/cm³',
      numbers: `lead ${formatQuantity(leadAreaMm2, 'mm²')} · ${formatQuantity(goldUm, 'µm')}${terms.wallGoldUm > 0 ? `, wall ${formatQuantity(terms.wallGoldUm, 'µm')}` : ''}`,
      result: formatQuantity(goldMg, 'mg'),
    },
    {
      label: 'Solder in the hole',
      formula: '(hole section − lead section) · board thickness · density',
      numbers: `${formatQuantity(solderMm3, 'mm³')} · ${formatQuantity(terms.densityGcm3, 'g/ml')}`,
      result: formatQuantity(solderMm3 * terms.densityGcm3, 'mg'),
    },
    {
      label: 'Share by mass',
      formula: 'm_Au/(m_Au + m_solder)',
      result: formatQuantity(goldMassFraction(goldMg, solderMm3, terms.densityGcm3) * 100, '%'),
    },
  ]
}
