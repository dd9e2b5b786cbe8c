import { wettingCurveMarks, type CurveConditions, type WettingCurveMarks } from './wetting-curve'
import { wettingBalance as method } from '@/shared/methods/wetting-balance'
import type { LotTest } from '@/shared/records/lot'
import { memo } from '@/shared/memo'

/** The curves of a wetting-balance test with their marks, or why its conditions allow none. */
export const curvesOfTest = memo(
  ({ readings, conditions }: LotTest): readonly WettingCurveMarks[] | string => {
    const needed = {
      perimeterMm: conditions['perimeterMm'],
      sectionMm2: conditions['sectionMm2'],
      depthMm: conditions['depthMm'],
      immersionSpeedMmPerS: conditions['immersionSpeedMmPerS'],
      surfaceTensionNPerM: conditions['surfaceTensionNPerM'],
      densityGPerMl: conditions['densityGPerMl'],
    }
    const missing = Object.entries(needed).filter(([, value]) => !(typeof value === 'number' && value > 0))
    if (missing.length > 0) {
      const labels = missing.map(([name]) =>
        method.conditions[name as keyof typeof needed].label.toLowerCase(),
      )
      return `its conditions lack ${labels.join(', ')}`
    }
    const { forceSign, contactAtS } = conditions
    if (forceSign !== 'down-positive' && forceSign !== 'up-positive')
      return 'the sign of the force is not stated'
    return wettingCurveMarks(readings, {
      ...(needed as Omit<CurveConditions, 'forceSign' | 'contactAtS'>),
      forceSign,
      contactAtS: typeof contactAtS === 'number' ? contactAtS : 0,
    })
  },
)
