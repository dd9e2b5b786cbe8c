import {
  allowedDefectsPerMillion,
  allowedFailureRateFit,
  HOURS_PER_YEAR,
} from '@/shared/physics/joint-budget'
import { boardJoints } from '@/shared/plan/board-joints'
import { demonstrationConfidenceMin } from '@/shared/plan/limits/assessment-proof'
import { wearOutShapeMin, wearOutShapeMax } from '@/shared/plan/limits/assessment-evidence'
import type { ShapeRange } from '@/shared/reliability/demonstration/wear-out-shown'
import { lifeCyclesNeeded } from '@/shared/plan/parameters/assessment-proof'
import { defectFreeBoards, survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Parameter } from '@/shared/plan/parameter'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Facts } from '@/shared/rules/facts'

/** What a programme has to reach, and to show: everything else is held against it. */
export interface ProgrammeTarget {
  readonly joints: number
  readonly serviceYears: number
  /** Hours of a service life, a year being 8760 h. */
  readonly lifeH: number
  /** Share of boards whose joints all outlive service, 0 to 1. */
  readonly survival: number
  /** Joint failures that a board may have in its life, on average: −ln survival. */
  readonly allowedFailures: number
  readonly boardFit: number
  readonly jointFit: number
  /** Undefined while the share of boards soldered without a defect is not specified. */
  readonly defectsPerMillion: number | undefined
  /** Temperature cycles of a service life; undefined while they are not specified. */
  readonly lifeCycles: number | undefined
  /** Weibull shapes between which that of joints wearing out is presumed to lie. */
  readonly wearOutShapes: ShapeRange
  /** One-sided, 0 to 1: how surely it is to be shown. */
  readonly confidence: number
}

/** The target as specified, or the labels of what is still to be specified for one. */
export function programmeTarget({
  values,
  requirements,
}: Pick<Facts, 'values' | 'requirements'>):
  | { readonly target: ProgrammeTarget; readonly missing?: undefined }
  | { readonly target?: undefined; readonly missing: readonly string[] } {
  const read = <T>(parameter: Parameter<T>): T | undefined => values.get(parameter.key) as T | undefined
  const [holes, surfaceMount] = [read(leadHoles), read(surfaceMountJoints)]
  const [years, survivalPct] = [read(serviceYears), read(survivalTarget)]
  if (holes === undefined || surfaceMount === undefined || years === undefined || survivalPct === undefined)
    return {
      missing: [leadHoles, surfaceMountJoints, serviceYears, survivalTarget]
        .filter(({ key }) => !values.has(key))
        .map(({ label }) => label),
    }
  const joints = boardJoints(holes, surfaceMount).total
  const survival = survivalPct / 100
  const jointFit = allowedFailureRateFit({ joints, serviceYears: years, survival })
  const defectFree = read(defectFreeBoards)
  const cyclesAYear = read(useCycles)?.reduce((sum, { perYear }) => sum + perYear, 0)
  return {
    target: {
      joints,
      serviceYears: years,
      lifeH: years * HOURS_PER_YEAR,
      survival,
      allowedFailures: -Math.log(survival),
      boardFit: jointFit * joints,
      jointFit,
      defectsPerMillion:
        defectFree === undefined
          ? undefined
          : allowedDefectsPerMillion({ joints, defectFreeBoards: defectFree / 100 }),
      lifeCycles: read(lifeCyclesNeeded) ?? (cyclesAYear === undefined ? undefined : cyclesAYear * years),
      wearOutShapes: wearOutShapesOf(requirements),
      confidence: governingRequirement(demonstrationConfidenceMin, requirements).value / 100,
    },
  }
}

function wearOutShapesOf(requirements: Facts['requirements']): ShapeRange {
  const min = governingRequirement(wearOutShapeMin, requirements).value
  return { min, max: Math.max(min, governingRequirement(wearOutShapeMax, requirements).value) }
}

/** Share of boards whose joints all outlive service at a constant rate of the board, in FIT. */
export const survivalAt = (boardFit: number, { lifeH }: Pick<ProgrammeTarget, 'lifeH'>): number =>
  Math.exp(-boardFit * 1e-9 * lifeH)
