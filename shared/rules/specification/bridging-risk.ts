import { fromMemory } from '@/shared/sources/provenance'
import { bridgingGapMin, bridgingRunMax } from '@/shared/plan/limits/spacings'
import { bridgingGuard } from '@/shared/plan/limits/specification-guards'
import { spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, tightest } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'

const GAP_STEP_MM = 0.05

export const bridgingRisk = rule({
  id: 'bridging-risk',
  title: 'Bridging between bare copper',
  why: 'Solder joins what lies close, bare and long across the wave; a bridge is the commonest defect of wave and dip soldering.',
  formula: 'bare gap ≥ least; run across the travel = length · sin(angle) ≤ most, below twice the least gap',
  stage: 'specification',
  version: 3,
  reads: { spacings, gap: bridgingGapMin, run: bridgingRunMax, guard: bridgingGuard },
  judge({ spacings: rows, gap, run, guard }) {
    const limit = `At least ${formatQuantity(gap.value, 'mm')} bare (${gap.document}); at most ${formatQuantity(run.value, 'mm')} side by side across the travel (${run.document})`
    const sources = [
      gap.limit.byDefault.from,
      run.limit.byDefault.from,
      fromMemory('Long parallel runs on the solder side lie along the travel; mask all that is not soldered'),
    ]
    const bare = rows.map((row, index) => ({ row, index })).filter(({ row }) => row.solderSide === 'bare')
    const parts = bare.map(({ row, index }) => judgeRow(row, index, { gap, run, share: guard.value / 100 }))
    const deciding = decidingPart(parts)
    const row = deciding && bare[parts.indexOf(deciding)]?.row
    if (!row) return notApplicable('No listed spacing meets the solder bare.')
    return judgedByParts({
      parts,
      noun: 'bare spacings',
      limit,
      working: [acrossWorking(row)],
      sources,
      notes: [
        'A trailing pad of three times the area, or a spare pair of pads at the end of a row, draws the last bridge off (solder thief).',
        'Whether rows of connector pins lie best along or across the travel, practice disagrees.',
      ],
    })
  },
})

/** The part of a run that lies across the travel, mm: length · sin(angle). */
export const acrossMm = ({ parallelMm = 0, travelAngleDeg = 90 }: SpacingRow): number =>
  parallelMm * Math.sin((travelAngleDeg * Math.PI) / 180)

interface Terms {
  readonly gap: GoverningRequirement
  readonly run: GoverningRequirement
  /** Of a limit, kept free. */
  readonly share: number
}

function judgeRow(row: SpacingRow, index: number, { gap, run, share }: Terms): Part {
  const gapMargin: Margin = {
    found: row.gapMm,
    limit: gap.value,
    unit: 'mm',
    direction: 'at least',
    guardBand: share * gap.value,
  }
  const across = Number(acrossMm(row).toFixed(6))
  const runMargin: Margin = {
    found: across,
    limit: run.value,
    unit: 'mm',
    direction: 'at most',
    guardBand: share * run.value,
  }
  // A gap twice the least bridges no longer for its length alone.
  const longRun = row.gapMm >= 2 * gap.value ? 'meets' : verdictOn(runMargin)
  const gapVerdict = verdictOn(gapMargin)
  // How long a run may be is common practice alone: it warns, the gap decides. One that nobody has stated may be as long.
  const unstated = row.parallelMm === undefined && row.gapMm < 2 * gap.value
  const verdict = worstVerdict([gapVerdict, longRun === 'fails' || unstated ? 'marginal' : longRun])
  const part: Part = {
    subject: row.between,
    verdict,
    found: `${formatQuantity(row.gapMm, 'mm')} bare${unstated ? '; how long they run side by side is not specified' : row.parallelMm === undefined ? '' : `, ${formatQuantity(across, 'mm', 3)} of side-by-side run across the travel`}`,
    margin: longRun === 'meets' ? gapMargin : tightest(gapMargin, runMargin),
    measured: {
      gap: measure(row.gapMm, 'mm'),
      ...(row.parallelMm !== undefined && { acrossTravel: measure(across, 'mm') }),
      ...(unstated && { sideBySide: 'not specified' }),
    },
  }
  if (verdict === 'meets') return part
  if (unstated && gapVerdict === 'meets')
    return {
      ...part,
      remedy: {
        message: `${row.between}: state how long they run side by side, and at what angle to the travel.`,
      },
    }
  const gapDecides = longRun === 'meets' && !unstated
  const value = stepAbove(gap.value * (gapDecides ? 1 + share : 2), GAP_STEP_MM)
  const remedy: Remedy = {
    message: `${row.between}: open the gap to ${formatQuantity(value, 'mm')}, mask the copper${longRun === 'meets' ? '' : ', or turn the run along the travel'}.`,
    cell: { parameter: spacings.key, row: index, column: 'gapMm', value },
  }
  return { ...part, remedy }
}

const acrossWorking = (row: SpacingRow) => ({
  label: `Run across the travel at ${row.between}`,
  formula: 'length side by side · sin(angle to travel); 90° where no angle is given',
  numbers: `${formatQuantity(row.parallelMm ?? 0, 'mm')} · sin(${formatQuantity(row.travelAngleDeg ?? 90, '°')})`,
  result: formatQuantity(acrossMm(row), 'mm'),
})
