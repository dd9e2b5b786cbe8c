import { CurveWithMarks, type CurveMark } from '@/app/drawing/curve-with-marks'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import type { WettingCurveMarks } from '@/shared/wetting/wetting-curve'
import type { LotTest } from '@/shared/records/lot'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'

const MAX_CURVES = 12
const MAX_POINTS = 4000
const MAX_ROWS = 200

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
        {curves.slice(0, MAX_CURVES).map((curve) => (
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
      <CurveTable curves={curves.slice(0, MAX_ROWS)} />
      {curves.length > MAX_CURVES && (
        <p className="field-hint">{`${MAX_CURVES} of ${curves.length} curves are drawn.`}</p>
      )}
    </>
  )
}

/** What every curve is read for, a specimen a row. */
function CurveTable({ curves }: { curves: readonly WettingCurveMarks[] }) {
  const said = (value: number | undefined, unit: Unit) =>
    value === undefined ? 'never' : formatQuantity(value, unit, 3)
  const number = (label: string, unit: Unit, of: (curve: WettingCurveMarks) => number | undefined) => ({
    label,
    set: 'number' as const,
    cell: (curve: WettingCurveMarks) => said(of(curve), unit),
  })
  const angle = (
    label: string,
    of: (curve: WettingCurveMarks) => readonly [degrees: number | undefined, forceMN: number | undefined],
  ) => ({
    label,
    set: 'number' as const,
    cell: (curve: WettingCurveMarks) => {
      const [degrees, forceMN] = of(curve)
      const above = degrees === undefined && forceMN !== undefined && forceMN > curve.theoreticalMN
      return above ? 'none: force above theory' : said(degrees, '°')
    },
  })
  return (
    <>
      <RuledTable
        caption="What the curves are read for"
        narrow="scroll"
        rows={curves}
        rowKey={({ specimen }) => specimen}
        columns={[
          { label: 'Specimen', names: true, cell: ({ specimen }) => specimen },
          number('Passes 90° at', 's', ({ buoyancyCrossS }) => buoyancyCrossS),
          number('Crosses zero at', 's', ({ zeroCrossS }) => zeroCrossS),
          number('Two thirds of theory at', 's', ({ twoThirdsOfTheoreticalS }) => twoThirdsOfTheoreticalS),
          number('Force at 2 s', 'mN', ({ forceAt2sMN }) => forceAt2sMN),
          number('Force at 5 s', 'mN', ({ forceAt5sMN }) => forceAt5sMN),
          number('Peak', 'mN', ({ peakMN }) => peakMN),
          number('Theoretical', 'mN', ({ theoreticalMN }) => theoreticalMN),
          angle('Angle at 2 s', (curve) => [curve.angleAt2sDeg, curve.forceAt2sMN]),
          angle('Least angle', (curve) => [curve.angleAtPeakDeg, curve.peakMN]),
          number('Fall after the peak', '%', ({ dewettingDropPct }) => dewettingDropPct),
        ]}
      />
      <p className="field-hint">
        The angle is 90° on the buoyancy line. A force above theory has no angle: check perimeter, depth and
        surface tension. “Never” means that the curve does not get there, or ends before. The curves are
        evidence, not a verdict, unless the parties agreed criteria.
      </p>
    </>
  )
}

function pointsOf({ points }: WettingCurveMarks): { x: number; y: number }[] {
  const step = Math.max(1, Math.ceil(points.length / MAX_POINTS))
  return points.filter((_, at) => at % step === 0).map(({ timeS, forceMN }) => ({ x: timeS, y: forceMN }))
}

/** Only the marks that the curve reaches. */
function marksOf(curve: WettingCurveMarks): CurveMark[] {
  const all = [
    { x: curve.buoyancyCrossS, y: curve.buoyancyLineMN, name: 'passes 90°' },
    { x: curve.zeroCrossS, y: 0, name: 'crosses zero' },
    { x: 2, y: curve.forceAt2sMN, name: 'force at 2 s' },
    { x: 5, y: curve.forceAt5sMN, name: 'force at 5 s' },
    { x: curve.peakAtS, y: curve.peakMN, name: 'peak' },
  ]
  return all.filter((mark): mark is CurveMark => mark.x !== undefined && mark.y !== undefined)
}
