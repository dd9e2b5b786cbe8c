import { ALLOYS } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { GOLD_SOURCE } from '@/shared/materials/metals'
import { goldMassFraction, goldMassMg, goldThicknessAtUm } from '@/shared/physics/gold-fraction'
import { annulusMm3, leadGirthMm } from '@/shared/physics/joint-volume'
import { goldFractionMax } from '@/shared/plan/limits/finishes'
import { goldFractionGuard } from '@/shared/plan/limits/specification-guards'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import { contactAngle } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepBelow } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'
import { finishesByComponent } from '@/shared/plan/finishes-by-component'
import { holeOf } from '@/shared/holes/joint-row'
import { jointShapeOf } from '@/shared/holes/joint-shape'
import { maxGoldUm } from './gold-to-solder'

interface Terms {
  readonly boardMm: number
  readonly barrelUm: number
  readonly densityGcm3: number
  /** Contact angle on lead and land, which shapes the fillet of an unplated hole. */
  readonly angleDeg: number | undefined
  /** Gold on walls and lands, µm, and whether its order leaves open how much more there may be. */
  readonly boardGoldUm: number
  readonly boardGoldIsOpen: boolean
  readonly finishOf: (component: string) => LeadFinish | undefined
  readonly limitPct: number
  /** Of the limit, kept free. */
  readonly share: number
}

export const goldFraction = rule({
  id: 'gold-fraction',
  title: 'Gold in each joint',
  why: 'Solder with more than a few per cent of gold turns brittle and cracks under shock and temperature swings.',
  formula:
    'm_Au/(m_Au + m_solder) ≤ most; plated hole: lead and wall in the board, solder between them; unplated: lead and land in the fillet, solder of the fillet alone',
  stage: 'specification',
  version: 3,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    boardThickness,
    alloy: solderAlloy,
    finish: boardFinish,
    goldMin: boardFinishMin,
    goldMax: optional(boardFinishMax),
    finishes: leadFinishes,
    angle: optional(contactAngle),
    max: goldFractionMax,
    guard: goldFractionGuard,
  },
  judge({ holes, wall, boardThickness: boardMm, alloy, finish, goldMin, goldMax, finishes, ...rest }) {
    const { max, guard, angle } = rest
    const gilded = BOARD_FINISHES[finish].coating === 'gold'
    const maxGold = maxGoldUm(finish, goldMin, goldMax)
    const terms: Terms = {
      boardMm,
      barrelUm: wall,
      densityGcm3: ALLOYS[alloy].densityGcm3,
      angleDeg: angle,
      boardGoldUm: gilded ? (maxGold ?? goldMin) : 0,
      boardGoldIsOpen: gilded && maxGold === undefined,
      finishOf: finishesByComponent(finishes),
      limitPct: max.value,
      share: guard.value / 100,
    }
    const parts = holes.map((row) => partOrContradiction(row.component, () => judgeRow(row, terms)))
    if (parts.every(({ verdict }) => verdict === 'not applicable'))
      return notApplicable('Neither leads nor board bring gold into a joint.')
    const deciding = decidingPart(parts)
    const row = deciding && holes[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'joint types',
      limit: `At most ${formatQuantity(max.value, '%')} of gold by mass (${max.document})`,
      working: row && deciding.margin ? workingOf(row, terms) : [],
      sources: [max.limit.byDefault.from, GOLD_SOURCE, ALLOYS[alloy].source],
      notes: [
        'In a plated hole counted on the lead and the wall within the board, with the smallest hole and the largest lead; the fillets, which would thin the gold, are left out. In an unplated hole there is no solder but the fillet: counted on the lead within it and on the land. All gold is taken to dissolve.',
        'A limit in per cent by volume is another number: 3 % by mass is about 1.3 % by volume in tin-lead.',
      ],
    })
  },
})

/** The gold and the solder of one joint, gold surfaces apart; undefined without gold. */
function contents(row: LeadHole, terms: Terms) {
  const finish = terms.finishOf(row.component)
  if (!finish) {
    throw new RangeError(`${row.component} is not among the lead finishes: add a row with this name.`)
  }
  const lead = {
    shape: row.leadShape,
    widthMm: row.leadMm + row.leadToleranceMm,
    thicknessMm: row.leadThicknessMm === undefined ? undefined : row.leadThicknessMm + row.leadToleranceMm,
  }
  const goldUm =
    LEAD_COATINGS[finish.coating].metal === 'gold' && !finish.goldRemoved
      ? (finish.coatingMostUm ?? finish.coatingUm)
      : 0
  if (goldUm === 0 && terms.boardGoldUm === 0) return undefined
  const open = terms.boardGoldIsOpen || (goldUm > 0 && finish.coatingMostUm === undefined)
  const surfaces = row.plated ? inBarrel(row, lead, terms) : inFillet(row, lead, terms)
  const goldMg = goldMassMg([
    { areaMm2: surfaces.leadAreaMm2, thicknessUm: goldUm },
    { areaMm2: surfaces.boardAreaMm2, thicknessUm: terms.boardGoldUm },
  ])
  return { ...surfaces, goldUm, boardGoldUm: terms.boardGoldUm, goldMg, open }
}

type Lead = Parameters<typeof leadGirthMm>[0]

interface Surfaces {
  readonly leadAreaMm2: number
  readonly boardAreaMm2: number
  readonly solderMm3: number
}

/** Lead and wall within the board, and the solder between them. */
function inBarrel(row: LeadHole, lead: Lead, { boardMm, barrelUm }: Terms): Surfaces {
  const holeMm = holeOf(row, barrelUm).minMm
  return {
    leadAreaMm2: leadGirthMm(lead) * boardMm,
    boardAreaMm2: Math.PI * holeMm * boardMm,
    solderMm3: annulusMm3({ holeMm, boardMm, landMm: row.landMm, lead }),
  }
}

/** Nothing wets the wall of an unplated hole: lead and land within the fillet, and its solder. */
function inFillet(row: LeadHole, lead: Lead, { boardMm, barrelUm, angleDeg }: Terms): Surfaces {
  if (angleDeg === undefined)
    throw new RangeError(
      'the contact angle to design for is not specified, which shapes the fillet: all the solder there is.',
    )
  const { fillet, filletMm3, hole } = jointShapeOf(row, { boardMm, barrelUm, angleDeg })
  return {
    leadAreaMm2: leadGirthMm(lead) * fillet.heightMm,
    boardAreaMm2: (Math.PI / 4) * (row.landMm ** 2 - hole.minMm ** 2),
    solderMm3: filletMm3,
  }
}

function judgeRow(row: LeadHole, terms: Terms): Part {
  const subject = row.component
  const counted = contents(row, terms)
  if (counted === undefined) return { subject, verdict: 'not applicable', found: 'no gold in the joint' }
  const { goldMg, goldUm, boardGoldUm, solderMm3, leadAreaMm2, open } = counted
  const found = goldMassFraction(goldMg, solderMm3, terms.densityGcm3) * 100
  const part = partOn({
    subject,
    measured: { gold: measure(goldMg, 'mg'), solder: measure(solderMm3 * terms.densityGcm3, 'mg') },
    found: `${formatQuantity(goldMg, 'mg', 3)} of gold in ${formatQuantity(solderMm3 * terms.densityGcm3, 'mg', 3)} of solder: ${formatQuantity(found, '%', 3)}`,
    margin: {
      found,
      limit: terms.limitPct,
      unit: '%',
      direction: 'at most',
      guardBand: terms.share * terms.limitPct,
    },
  })
  if (open && part.verdict !== 'fails')
    return {
      ...part,
      verdict: 'undetermined',
      measured: { ...part.measured, max: 'not specified' },
      found: `${part.found} of the least gold; the order of lead or board sets no most`,
    }
  if (part.verdict === 'meets' || goldUm === 0) return part
  const aim = (terms.limitPct / 100) * (1 - terms.share)
  const atMaxUm = stepBelow(goldThicknessAtUm(aim, solderMm3, leadAreaMm2, terms.densityGcm3), 0.01)
  const limitGold =
    boardGoldUm === 0 && atMaxUm > 0
      ? `hold the gold on the lead to ${formatQuantity(atMaxUm, 'µm')}, or `
      : ''
  return {
    ...part,
    remedy: { message: `${subject}: ${limitGold}have the gold removed before soldering.` },
  }
}

function workingOf(row: LeadHole, terms: Terms): WorkingLine[] {
  const counted = contents(row, terms)
  if (counted === undefined) return []
  const { goldMg, goldUm, boardGoldUm, solderMm3, leadAreaMm2, boardAreaMm2 } = counted
  return [
    {
      label: `Gold at ${row.component}`,
      formula: 'Σ area · thickness · 19.3 g/cm³',
      numbers: `lead ${formatQuantity(leadAreaMm2, 'mm²')} · ${formatQuantity(goldUm, 'µm')}${boardGoldUm > 0 ? `, ${row.plated ? 'wall' : 'land'} ${formatQuantity(boardAreaMm2, 'mm²')} · ${formatQuantity(boardGoldUm, 'µm')}` : ''}`,
      result: formatQuantity(goldMg, 'mg'),
    },
    {
      label: row.plated ? 'Solder in the hole' : 'Solder of the fillet',
      formula: row.plated
        ? '(hole section − lead section) · board thickness · density'
        : 'fillet by the contact angles · density',
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
