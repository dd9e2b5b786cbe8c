import { INSULATION_CONDITIONS, type InsulationConditionKey } from '@/shared/materials/insulation-conditions'
import { insulationResistanceLeast } from '@/shared/plan/limits/assessment-residue'
import { insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue, insulationNeeded } from '@/shared/plan/parameters/solder'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { insulationReadings } from '@/shared/rules/assembly-record-sources'
import { measure } from '@/shared/rules/measure'
import { groupedBy } from '@/shared/grouped-by'

type Reading = RecordOf<'insulation-resistance'>

/** Resistance scatters over decades: within a factor of two of the limit is marginal. */
const GUARD_FACTOR = 2

export const insulationResistanceRule = rule({
  id: 'insulation-resistance',
  title: 'Surface insulation resistance',
  why: 'Residue that is harmless when dry conducts in damp heat. The test shows what the circuit will see between its conductors.',
  stage: 'assessment',
  version: 2,
  reads: {
    asked: optional(insulationTest),
    residue: optional(fluxResidue),
    needed: optional(insulationNeeded),
    least: insulationResistanceLeast,
    readings: insulationReadings,
  },
  judge({ asked, residue, needed, least, readings }): Judged {
    const condition = conditionOf(asked, residue, needed, readings)
    if (condition === undefined)
      return notApplicable(
        needed === undefined
          ? 'No insulation resistance test is asked: the circuit names no insulation that it needs.'
          : `No insulation resistance test is asked by decision, though the circuit needs ${formatQuantity(needed, 'MΩ')}.`,
      )
    const { label, countsFromHours, lastsHours, source } = INSULATION_CONDITIONS[condition]
    const limitMOhm = Math.max(least.value, needed ?? 0)
    const limit = `At least ${formatQuantity(limitMOhm, 'MΩ')} (${needed !== undefined && needed > least.value ? 'what the circuit needs' : namedRuling(least)}) at ${label}, in every reading from ${countsFromHours} h on, to ${lastsHours} h.`
    const own = readings.filter((reading) => reading.condition === condition)
    const sources = [sourceOf(least), source]
    if (own.length === 0)
      return {
        ...undetermined(
          readings.length === 0
            ? 'No insulation resistance is recorded yet.'
            : `All ${readings.length} readings were made under other conditions; results are not interchangeable.`,
          [`insulation resistance readings at ${label}`],
          limit,
        ),
        sources,
      }
    const patterns = groupedBy(own, ({ pattern }) => pattern)
    return judgedByParts({
      parts: [...patterns].map(([pattern, rows]) =>
        judgePattern(pattern, rows, limitMOhm, countsFromHours, lastsHours),
      ),
      noun: 'patterns',
      limit,
      working: [{ label: 'Readings under the condition', result: `${own.length} of ${readings.length}` }],
      sources,
      notes: [
        'Readings under 85 °C/85 % and under 40 °C/90 % are not interchangeable: heat drives off the weak acids that low-solids fluxes leave.',
      ],
      cautions: [
        'Patterns are under voltage in a damp chamber: switch off and discharge before reaching in.',
      ],
    })
  },
})

/**
 * The condition asked for. Left open, a test is asked only where the circuit
 * needs insulation, under the condition for boards cleaned or not cleaned. What
 * was read all the same is judged, asked for or not.
 */
function conditionOf(
  asked: InsulationConditionKey | 'not-asked' | undefined,
  residue: 'stays' | 'removed' | undefined,
  needed: number | undefined,
  readings: readonly Reading[],
): InsulationConditionKey | undefined {
  if (asked === 'not-asked') return readings[0]?.condition
  if (asked !== undefined) return asked
  if (needed !== undefined) return residue === 'removed' ? 'iec-cleaned' : 'iec-not-cleaned'
  return readings[0]?.condition
}

function judgePattern(
  pattern: string,
  rows: readonly Reading[],
  limitMOhm: number,
  countsFromHours: number,
  lastsHours: number,
): Part {
  const counting = rows.filter(({ hours }) => hours >= countsFromHours)
  const lowest = counting.reduce<Reading | undefined>(
    (low, row) => (low === undefined || row.resistanceMOhm < low.resistanceMOhm ? row : low),
    undefined,
  )
  if (!lowest)
    return {
      subject: pattern,
      verdict: 'undetermined',
      found: `no reading after ${countsFromHours} h yet.`,
      remedy: { says: `Read on to ${lastsHours} h.` },
    }
  const margin: Margin = {
    found: lowest.resistanceMOhm,
    limit: limitMOhm,
    unit: 'MΩ',
    direction: 'at least',
    guardBand: (GUARD_FACTOR - 1) * limitMOhm,
  }
  const printed = formatAgainst(lowest.resistanceMOhm, limitMOhm, 'MΩ').found
  const verdict = verdictOn(margin)
  const longest = Math.max(...counting.map(({ hours }) => hours))
  if (verdict !== 'fails' && longest < lastsHours)
    return {
      subject: pattern,
      verdict: 'undetermined',
      found: `${printed} at the lowest, but read for ${longest} of ${lastsHours} h only.`,
      margin,
      remedy: { says: `Read on to ${lastsHours} h.` },
    }
  return {
    subject: pattern,
    verdict,
    measured: { lowestAt: measure(lowest.hours, 'h') },
    found: `${printed} at the lowest, at ${lowest.hours} h.`,
    margin,
    ...(verdict !== 'meets' && {
      remedy: {
        says: 'Remove the residue better, or choose a flux of lower activity; then test new coupons.',
      },
    }),
  }
}
