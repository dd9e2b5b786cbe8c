import { fromMemory } from '@/shared/sources/provenance'
import {
  allowedDefectsPerMillion,
  allowedFailureRateFit,
  HOURS_PER_YEAR,
} from '@/shared/physics/joint-budget'
import { boardJoints } from '@/shared/plan/board-joints'
import { jointBudgetGuard } from '@/shared/plan/limits/specification-guards'
import {
  boardQuality,
  defectFreeBoards,
  failureRateEdition,
  survivalTarget,
  surfaceMountJoints,
} from '@/shared/plan/parameters/joint-budget'
import { copperLayers } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { environment, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { optional, rule } from '@/shared/rules/rule'
import { boardSurvival } from '@/shared/reliability/models/board-survival'
import { modelLabel } from '@/shared/reliability/models/model'
import { predictedRates, type Prediction } from '@/shared/reliability/joint-budget-prediction'

/** The plane factor of the handbook ends here. */
const MAX_PLANES = 18

export const jointBudget = rule({
  id: 'joint-budget',
  title: 'Joint reliability budget',
  why: 'Every joint must hold for the board to hold. The budget says how rarely one joint may fail in service, and how rarely one may leave soldering defective; inspection is judged against it.',
  formula: 'Σ joints · λ (MIL-HDBK-217F, 16.1 and 17.1) ≤ −ln R/H; defects allowed 10⁶ · (1 − Y^(1/N))',
  stage: 'specification',
  version: 2,
  reads: {
    holes: leadHoles,
    surfaceMount: surfaceMountJoints,
    years: serviceYears,
    survival: survivalTarget,
    defectFree: defectFreeBoards,
    environment,
    layers: copperLayers,
    quality: boardQuality,
    edition: optional(failureRateEdition),
    guard: jointBudgetGuard,
  },
  judge({ holes, surfaceMount, years, survival, defectFree, edition, layers, guard, ...board }) {
    if (layers > MAX_PLANES) {
      return undetermined(
        `The plane factor of MIL-HDBK-217F ends at ${MAX_PLANES} planes; the board has ${layers}.`,
        ['a failure-rate model for so many layers'],
      )
    }
    const joints = boardJoints(holes, surfaceMount)
    const target = { joints: joints.total, serviceYears: years, survival: survival / 100 }
    const allowedFit = allowedFailureRateFit(target)
    const allowedBoardFit = allowedFit * joints.total
    const perMillion = allowedDefectsPerMillion({ joints: joints.total, defectFreeBoards: defectFree / 100 })
    const prediction = worstPrediction({ ...board, holes, joints, layers }, edition, years)
    const margin = {
      found: prediction.boardFit,
      limit: allowedBoardFit,
      unit: 'FIT',
      direction: 'at most',
      guardBand: (guard.value / 100) * allowedBoardFit,
    } as const
    const verdict = verdictOn(margin)
    const models = prediction.models.map(modelLabel).join(' and ')
    return {
      verdict,
      found: `${joints.total} joints over ${formatQuantity(years, 'years')}: ${formatQuantity(allowedFit, 'FIT', 3)} a joint and ${formatQuantity(perMillion, 'per million', 3)} defective joints are allowed. ${models} predicts ${formatQuantity(prediction.boardFit, 'FIT', 3)} a board, ${formatQuantity(prediction.survival * 100, '%', 5)} of boards surviving.`,
      limit: `${formatQuantity(survival, '%', 6)} of boards outlive service, ${formatQuantity(defectFree, '%', 6)} leave soldering without a defect; a board may have ${formatQuantity(allowedBoardFit, 'FIT', 3)}`,
      margin,
      measured: {
        joints: count(joints.total, 'joints'),
        service: measure(years, 'years'),
        allowedDefects: measure(perMillion, 'per million'),
        edition: prediction.edition,
      },
      working: [
        {
          label: 'Allowed rate of a joint',
          formula: '−ln R/(N · H) · 10⁹',
          numbers: `R = ${formatQuantity(survival / 100, '1', 6)}, N = ${joints.total}, H = ${formatQuantity(years, '1')} · ${HOURS_PER_YEAR} h`,
          result: formatQuantity(allowedFit, 'FIT'),
        },
        {
          label: 'Allowed defective joints',
          formula: '10⁶ · (1 − Y^(1/N))',
          numbers: `Y = ${formatQuantity(defectFree / 100, '1', 6)}, N = ${joints.total}`,
          result: formatQuantity(perMillion, 'per million'),
        },
        ...prediction.working,
      ],
      sources: [
        ...prediction.models.map((model) => model.source),
        fromMemory('Series model at constant failure rates; binomial board yield'),
      ],
      ...(verdict !== 'meets' && { remedy: { message: remedyInWords(joints.hand > 0) } }),
      notes: [
        ...(edition ? [] : ['No edition is chosen: the higher of both predictions is taken.']),
        ...new Set(prediction.models.map((model) => model.caution)),
        'Latent defects and random failures share the target: a defect that escapes inspection is not counted in the predicted rate.',
      ],
      cautions: ['A prediction supports a decision between designs; it is no proof that a product is safe.'],
    }
  },
})

function worstPrediction(
  board: Parameters<typeof predictedRates>[0],
  edition: 'notice-2' | 'base' | undefined,
  years: number,
): Prediction & { edition: string; boardFit: number; survival: number } {
  const editions = edition ? [edition] : (['notice-2', 'base'] as const)
  return editions
    .map((each) => {
      const prediction = predictedRates(board, each)
      const { boardFit, survival } = boardSurvival(
        prediction.rates.map((rate) => ({ joints: 1, rate })),
        years,
      )
      return { ...prediction, edition: each, boardFit, survival }
    })
    .reduce((worst, other) => (other.boardFit > worst.boardFit ? other : worst))
}

const remedyInWords = (byHand: boolean): string =>
  byHand
    ? 'Solder fewer joints by hand (one weighs as many as fourteen by machine in this model), use fewer joints, or agree another target.'
    : 'Use fewer joints or layers, a better board, a milder environment, or agree another target.'
