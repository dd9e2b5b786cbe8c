import { RangesInWindows } from '@/app/drawing/ranges-in-windows'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { HOLE_ALLOWANCES, type ProducibilityLevel } from '@/shared/materials/hole-allowances'
import { DRILL_SERIES, type DrillSeries } from '@/shared/materials/preferred-drills'
import { nearestDrill } from '@/shared/physics/drill-choice'
import { holeWindow } from '@/shared/physics/hole-window'
import { clearanceWindow, type Interval } from '@/shared/physics/lead-clearance'
import { radialClearanceMin, radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import {
  drillSeries,
  barrelPlating,
  leadHoles,
  producibilityLevel,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { holeOf, leadOf } from '@/shared/holes/joint-row'
import { MAX_DRAWN } from './drawn-in-part'
import { orNothing, governingFor, valueOf } from './value-of'

/** Taken while production has named no series. */
const USUAL_SERIES: DrillSeries = 'metric-0.05'

/** Every finished hole against the window of its lead and level, and the drill that would serve. */
export function HoleWindows({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, leadHoles)
  const barrelUm = valueOf(view, barrelPlating)
  const level = valueOf(view, producibilityLevel)
  if (!rows || barrelUm === undefined || !level) return null
  const series = valueOf(view, drillSeries) ?? USUAL_SERIES
  const clearance = {
    minMm: governingFor(view, radialClearanceMin).value,
    maxMm: governingFor(view, radialClearanceMax).value,
  }
  const terms: Terms = { barrelUm, level, series, clearance }
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
          .slice(0, MAX_DRAWN)
          .map(({ row, hole }) => `${row.component} ${range(hole.minMm, hole.maxMm)}`)
          .join(', ')}.`}
        axis="Finished hole, mm"
        rows={holes.slice(0, MAX_DRAWN).map(({ row, hole, both, drill }) => ({
          name: row.component,
          min: hole.minMm,
          nominal: hole.nominalMm,
          max: hole.maxMm,
          window: both,
          message: both ? (drill ? `drill ${mm(drill.drillMm)}` : 'no drill of the series') : 'no hole suits',
        }))}
        numbers={{
          columns: [
            { label: 'Joint' },
            { label: 'Lead', set: 'text' },
            { label: `Level ${level}`, set: 'text' },
            { label: 'Clearance', set: 'text' },
            { label: 'Finished', set: 'text' },
            { label: 'Drilled', set: 'text' },
            { label: 'Suggested drill', set: 'text' },
          ],
          rows: holes.map(({ row, hole, lead, byLevel, byClearance, drill }) => [
            row.component,
            range(lead.minMm, lead.maxMm),
            byLevel.feasible ? range(byLevel.minMm, byLevel.maxMm) : 'none',
            range(byClearance.minMm, byClearance.maxMm),
            range(hole.minMm, hole.maxMm),
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
const range = (min: number, max: number): string => `${formatNumber(Number(min.toFixed(3)))} to ${mm(max)}`

interface Terms {
  readonly barrelUm: number
  readonly level: ProducibilityLevel
  readonly series: DrillSeries
  /** Radial, mm. */
  readonly clearance: Interval
}

/** Throws RangeError when the row contradicts itself. */
function holeIn(row: LeadHole, { barrelUm, level, series, clearance }: Terms) {
  const hole = holeOf(row, barrelUm)
  const lead = leadOf(row)
  const byLevel = holeWindow(lead, level)
  const byClearance = clearanceWindow(lead, clearance)
  const from = Math.max(byLevel.minMm, byClearance.minMm)
  const to = Math.min(byLevel.maxMm, byClearance.maxMm)
  const drill = nearestDrill({
    wantedMm: (from + to) / 2,
    minMm: from + hole.toleranceMm,
    maxMm: to - hole.toleranceMm,
    barrelUm,
    sizesMm: DRILL_SERIES[series].sizesMm,
  })
  return { row, hole, lead, byLevel, byClearance, both: from <= to ? { from, to } : undefined, drill }
}
