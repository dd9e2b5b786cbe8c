import { CurveWithMarks, type CurveMark } from '@/app/drawing/curve-with-marks'
import { Notice } from '@/app/ui/notice'
import type { WettingCurveMarks } from '@/shared/physics/wetting-curve'
import type { LotTest } from '@/shared/records/lot'
import { curvesOfTest } from '@/shared/rules/evaluation/curves-of-test'

const MOST_CURVES = 12
const MOST_POINTS = 4000

/** The force on each specimen over time, with what the curve is read for. */
export function WettingCurves({ test }: { test: LotTest }) {
  const curves = curvesOfTest(test)
  if (typeof curves === 'string')
    return (
      <Notice
        kind="warning"
        title="The curves cannot be drawn"
      >{`The test cannot be read: ${curves}.`}</Notice>
    )
  return (
    <>
      <div className="picture-row">
        {curves.slice(0, MOST_CURVES).map((curve) => (
          <CurveWithMarks
            key={curve.specimen}
            title={`Specimen ${curve.specimen}`}
            across={{ label: 'Time', unit: 's' }}
            up={{ label: 'Force', unit: 'mN' }}
            points={pointsOf(curve)}
            marks={marksOf(curve)}
            levels={[
              { y: curve.buoyancyLineMN, name: 'buoyancy line: 90°' },
              { y: curve.theoreticalMN, name: 'theoretical' },
            ]}
          />
        ))}
      </div>
      {curves.length > MOST_CURVES && (
        <p className="field-hint">{`${MOST_CURVES} of ${curves.length} curves are drawn.`}</p>
      )}
    </>
  )
}

function pointsOf({ points }: WettingCurveMarks): { x: number; y: number }[] {
  const step = Math.max(1, Math.ceil(points.length / MOST_POINTS))
  return points.filter((_, at) => at % step === 0).map(({ timeS, forceMN }) => ({ x: timeS, y: forceMN }))
}

/** Only the marks that the curve reaches. */
function marksOf(curve: WettingCurveMarks): CurveMark[] {
  const all = [
    { x: curve.buoyancyCrossS, y: curve.buoyancyLineMN, name: 'passes 90°' },
    { x: curve.zeroCrossS, y: 0, name: 'crosses zero' },
    { x: 2, y: curve.forceAt2sMN, name: 'force at 2 s' },
    { x: 5, y: curve.forceAt5sMN, name: 'force at 5 s' },
  ]
  return all.filter((mark): mark is CurveMark => mark.x !== undefined && mark.y !== undefined)
}
