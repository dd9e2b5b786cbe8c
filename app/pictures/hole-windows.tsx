import { RangesInWindows } from '@/app/drawing/ranges-in-windows'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { HOLE_ALLOWANCES, type ProducibilityLevel } from '@/shared/materials/hole-allowances'
import { DRILL_SERIES, type DrillSeries } from '@/shared/materials/preferred-drills'
import { nearestDrill } from '@/shared/physics/drill-choice'
import { holeWindow } from '@/shared/physics/hole-window'
import { clearanceWindow, type Interval } from '@/shared/physics/lead-clearance'
import { radialClearanceLeast, radialClearanceMost } from '@/shared/plan/limits/lead-holes'
import {
  drillSeries,
  holeWall,
  leadHoles,
  producibilityLevel,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { holeOf, leadOf } from '@/shared/holes/joint-row'
import { MOST_DRAWN } from './drawn-in-part'
import { orNothing, rulingFor, valueOf } from './value-of'

/** Taken while production has named no series. */
const USUAL_SERIES: DrillSeries = 'metric-0.05'

/** Every finished hole against the window of its lead and level, and the drill that would serve. */
export function HoleWindows({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, leadHoles)
  const wallUm = valueOf(view, holeWall)
  const level = valueOf(view, producibilityLevel)
  if (!rows || wallUm === undefined || !level) return null
  const series = valueOf(view, drillSeries) ?? USUAL_SERIES
  const clearance = {
    leastMm: rulingFor(view, radialClearanceLeast).value,
    mostMm: rulingFor(view, radialClearanceMost).value,
  }
  const terms: Terms = { wallUm, level, series, clearance }
  const plated = rows.filter((row) => row.plated)
  const holes = plated.flatMap((row) => orNothing(() => [holeIn(row, terms)]) ?? [])
  if (holes.length === 0) return null
  return (
    <Section
      heading="Holes for their leads"
      lead="The window is what both the producibility level and the radial clearance leave to the finished hole."
    >
      <RangesInWindows
        title={`Finished holes against level ${level} and the clearance window`}
        description={`Each plated hole at its limits against the window of its lead: ${holes
          .slice(0, MOST_DRAWN)
          .map(({ row, hole }) => `${row.component} ${range(hole.leastMm, hole.mostMm)}`)
          .join(', ')}.`}
        axis="Finished hole, mm"
        rows={holes.slice(0, MOST_DRAWN).map(({ row, hole, both, drill }) => ({
          name: row.component,
          least: hole.leastMm,
          nominal: hole.nominalMm,
          most: hole.mostMm,
          window: both,
          says: both ? (drill ? `drill ${mm(drill.drillMm)}` : 'no drill of the series') : 'no hole suits',
        }))}
        numbers={{
          columns: [
            { label: 'Joint' },
            { label: 'Lead' },
            { label: `Level ${level}` },
            { label: 'Clearance' },
            { label: 'Finished' },
            { label: 'Drilled' },
            { label: 'Suggested drill' },
          ],
          rows: holes.map(({ row, hole, lead, byLevel, byClearance, drill }) => [
            row.component,
            range(lead.leastMm, lead.mostMm),
            byLevel.feasible ? range(byLevel.leastMm, byLevel.mostMm) : 'none',
            range(byClearance.leastMm, byClearance.mostMm),
            range(hole.leastMm, hole.mostMm),
            mm(hole.drillMm),
            drill ? `${mm(drill.drillMm)}, finishes at ${mm(drill.finishedMm)}` : '–',
          ]),
        }}
        note={`${HOLE_ALLOWANCES[level].source.cite}. Suggested: the drill nearest the middle of what both leave (${DRILL_SERIES[series].label}). A lead with corners counts by its diagonal.`}
      />
    </Section>
  )
}

const mm = (value: number): string => formatQuantity(Number(value.toFixed(3)), 'mm')
const range = (least: number, most: number): string =>
  `${formatNumber(Number(least.toFixed(3)))} to ${mm(most)}`

interface Terms {
  readonly wallUm: number
  readonly level: ProducibilityLevel
  readonly series: DrillSeries
  /** Radial, mm. */
  readonly clearance: Interval
}

/** Throws RangeError when the row contradicts itself. */
function holeIn(row: LeadHole, { wallUm, level, series, clearance }: Terms) {
  const hole = holeOf(row, wallUm)
  const lead = leadOf(row)
  const byLevel = holeWindow(lead, level)
  const byClearance = clearanceWindow(lead, clearance)
  const from = Math.max(byLevel.leastMm, byClearance.leastMm)
  const to = Math.min(byLevel.mostMm, byClearance.mostMm)
  const drill = nearestDrill({
    wantedMm: (from + to) / 2,
    leastMm: from + hole.toleranceMm,
    mostMm: to - hole.toleranceMm,
    wallUm,
    sizesMm: DRILL_SERIES[series].sizesMm,
  })
  return { row, hole, lead, byLevel, byClearance, both: from <= to ? { from, to } : undefined, drill }
}
