import { boardLength, boardWidth, componentPlaces } from '@/shared/plan/parameters/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { defectRecord } from '@/shared/inspection/defect-record'
import { defectsByDirection, type DirectionComparison } from '@/shared/inspection/defects-by-direction'
import type { Inspection } from '@/shared/records/inspection'
import { directionChanceMax } from '@/shared/plan/limits/assessment-evidence'
import { exactBinomialPValue } from '@/shared/statistics/comparison/exact-binomial-test'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { undetermined, type Judged, type Part, type Measured } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { inspections } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { electricalTests } from '@/shared/rules/assembly-record-sources'
import { measure, count } from '@/shared/rules/measure'

export const defectDirection = rule({
  id: 'defect-direction',
  title: 'Defects against the direction of travel',
  why: 'Bridges gather where rows cross the travel, skips where a tall part shadows the wave. A map shows a pattern to the eye; the test says whether chance would draw it as well.',
  formula: 'share of defects on one side of the travel against chance',
  stage: 'assessment',
  version: 2,
  reads: {
    holes: leadHoles,
    places: optional(componentPlaces),
    lengthMm: optional(boardLength),
    widthMm: optional(boardWidth),
    chanceMax: directionChanceMax,
    inspections,
    tests: electricalTests,
  },
  judge({ holes, places, lengthMm, widthMm, chanceMax, inspections: looks, tests }): Judged {
    if (!places)
      return notApplicable(
        'Where components stand is not specified, so that no effect of direction can be tested.',
      )
    const limit = `No class of joints worse than chance explains (${formatQuantity(chanceMax.value, '%')} over all comparisons together, ${governingName(chanceMax)}).`
    if (looks.length === 0)
      return undetermined('No inspection is recorded yet.', ['inspections of assemblies'], limit)
    const comparisons = defectsByDirection(defectRecord(looks, tests, undefined), holes, places, lengthMm)
    if (comparisons.length === 0)
      return notApplicable('All components named lie alike: there is nothing to compare.')
    const off = outside(looks, lengthMm, widthMm)
    return judgedByParts({
      parts: comparisons.map((comparison) => partOf(comparison, chanceMax.value / 100 / comparisons.length)),
      noun: 'comparisons',
      limit,
      working: comparisons.flatMap(({ title, classes, effect }) => ({
        label: title,
        formula:
          effect === undefined
            ? 'no defect to compare'
            : `${effect.test}: defects shared out by joints inspected`,
        numbers: classes
          .map(({ name, defects, joints }) => `${name}: ${defects} of ${formatNumber(joints, 12)}`)
          .join('; '),
        result:
          effect === undefined
            ? 'no defect'
            : `chance of so uneven a spread ${formatNumber(effect.pValue, 3)}`,
      })),
      sources: [
        {
          cite: 'Exact binomial test, two-sided by ordered likelihood; significance shared out over comparisons (Bonferroni)',
          how: 'computed',
        },
        sourceOf(chanceMax),
      ],
      notes: [
        'It finds that a class is worse, not why: rows across the travel may also be the ones with narrow gaps.',
        ...(off > 0 ? [`Defects placed outside the board: ${off}. Check their millimetres.`] : []),
      ],
    })
  },
})

function partOf({ key, title, classes, effect }: DirectionComparison, telling: number): Part {
  const named = { subject: title, about: { comparison: key } }
  if (effect === undefined)
    return { ...named, verdict: 'not applicable', found: 'no defect fell into either class.' }
  const { worst, pValue, riskRatio } = effect
  const measured: Measured = {
    worst,
    chance: measure(pValue, '1'),
    // Where the other class has no defect, it is no number of times as often.
    ...(Number.isFinite(riskRatio) && { ratio: measure(riskRatio, '×') }),
    ...Object.fromEntries(
      classes.flatMap(({ name, defects, joints }) => [
        [`defects of ${name}`, count(defects)],
        [`joints of ${name}`, count(joints, 'joints')],
      ]),
    ),
  }
  const counted = classes
    .map(({ name, defects, joints }) => `${name} ${defects} of ${formatNumber(joints, 12)}`)
    .join(', ')
  if (!(smallestChance(classes) < telling))
    return {
      ...named,
      verdict: 'not applicable',
      measured,
      found: `too few defects to tell, wherever they fall: ${counted}.`,
    }
  if (!(pValue < telling))
    return {
      ...named,
      verdict: 'meets',
      measured,
      found: `no effect shown: ${counted} (chance ${formatNumber(pValue, 2)}).`,
    }
  const times = Number.isFinite(riskRatio) ? `${formatNumber(riskRatio, 2)} times as often` : 'only there'
  return {
    ...named,
    verdict: 'marginal',
    measured,
    found: `defects fall on ${worst} ${times}: ${counted} (chance ${formatNumber(pValue, 2)}).`,
    remedy: {
      message: `Look at how ${worst} leave the solder: turn the part or the board, change the exit, or give the last joint of the row a land to drain to.`,
    },
  }
}

/** The chance of so many defects if all fell into one of the two classes: no spread of them is less likely. */
function smallestChance(classes: DirectionComparison['classes']): number {
  const defects = classes.reduce((sum, each) => sum + each.defects, 0)
  const joints = classes.reduce((sum, each) => sum + each.joints, 0)
  return Math.min(...classes.map((each) => exactBinomialPValue(defects, defects, each.joints / joints)))
}

/** Defects placed where the board is not. */
const outside = (
  looks: readonly Inspection[],
  lengthMm: number | undefined,
  widthMm: number | undefined,
): number =>
  looks
    .flatMap(({ defects }) => defects)
    .filter(
      ({ xMm, yMm }) =>
        (lengthMm !== undefined && xMm !== undefined && xMm > lengthMm) ||
        (widthMm !== undefined && yMm !== undefined && yMm > widthMm),
    ).length
