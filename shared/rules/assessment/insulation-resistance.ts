import { namedInstrumentDoubt } from '@/shared/instruments/named-instrument'
import { calibrations } from '@/shared/rules/log-record-sources'
import { instruments } from '@/shared/rules/record-source'
import { INSULATION_CONDITIONS, type InsulationConditionKey } from '@/shared/materials/insulation-conditions'
import { insulationResistanceMin } from '@/shared/plan/limits/assessment-residue'
import { insulationGuard } from '@/shared/plan/limits/assessment-guards'
import { insulationPatternsMin } from '@/shared/plan/limits/assessment-evidence'
import { insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue, insulationNeeded } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { undetermined, type Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { insulationReadings } from '@/shared/rules/assembly-record-sources'
import { fromMemory } from '@/shared/sources/provenance'
import { betweenInWords, judgePattern, tooFew } from '@/shared/inspection/insulation-pattern'
import { groupedBy } from '@/shared/grouped-by'

type Reading = RecordOf<'insulation-resistance'>

const LOOK_SOURCE = fromMemory(
  'J-STD-004: no filament that narrows the spacing by more than a fifth, no corrosion of conductors',
)

export const insulationResistanceRule = rule({
  id: 'insulation-resistance',
  title: 'Surface insulation resistance',
  why: 'Residue that is harmless when dry conducts in damp heat. The test shows what the circuit will see between its conductors.',
  formula: 'every reading ≥ least at its test’s climate and hours; none falls without cause',
  stage: 'assessment',
  version: 4,
  reads: {
    asked: optional(insulationTest),
    residue: optional(fluxResidue),
    needed: optional(insulationNeeded),
    min: insulationResistanceMin,
    patternsMin: insulationPatternsMin,
    guard: insulationGuard,
    readings: insulationReadings,
    instruments,
    calibrations,
  },
  judge({ asked, residue, needed, min, patternsMin, guard, readings, ...file }): Judged {
    const condition = conditionOf(asked, residue, needed, readings)
    if (condition === undefined)
      return notApplicable(
        needed === undefined
          ? 'No insulation resistance test is asked: the circuit names no insulation that it needs.'
          : `No insulation resistance test is asked by decision, though the circuit needs ${formatQuantity(needed, 'MΩ')}.`,
      )
    const { label, countsFromHours, maxHoursBetween, lastsHours, source } = INSULATION_CONDITIONS[condition]
    const limitMOhm = Math.max(min.value, needed ?? 0)
    const limit = `At least ${formatQuantity(limitMOhm, 'MΩ')} (${needed !== undefined && needed > min.value ? 'what the circuit needs' : governingName(min)}) at ${label}, in every reading from ${countsFromHours} h on, to ${lastsHours} h, no more than ${betweenInWords(maxHoursBetween)} apart, on ${formatQuantity(patternsMin.value, 'pieces')} (${governingName(patternsMin)}); afterwards no corrosion, and no filament over more than a fifth of the spacing (${LOOK_SOURCE.cite}).`
    const own = readings.filter((reading) => reading.condition === condition)
    const sources = [sourceOf(min), sourceOf(patternsMin), source, LOOK_SOURCE]
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
      parts: [
        ...[...patterns].map(([pattern, rows]) =>
          judgePattern(pattern, rows, {
            limitMOhm,
            guardBand: (guard.value / 100) * limitMOhm,
            countsFromHours,
            maxHoursBetween,
            lastsHours,
            doubtOf: (reading, verdict) => namedInstrumentDoubt(reading, verdict, file),
          }),
        ),
        ...tooFew(patterns.size, patternsMin.value),
      ],
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
