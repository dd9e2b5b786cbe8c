import { COPPER_RESISTANCE } from '@/shared/materials/conductor-current-laws'
import { published } from '@/shared/sources/provenance'
import { conductorResistanceOhm } from '@/shared/physics/conductor-resistance'
import { riseByIpc2221 } from '@/shared/physics/conductor-current'
import { conductors, WIDEST_CONDUCTOR_MM, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOn } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'

/** Finished tracks differ from drawn ones by up to two to one; a fifth is kept free. */
const GUARD_SHARE = 0.2
const WIDTH_STEP_MM = 0.05

export const conductorDrop = rule({
  id: 'conductor-drop',
  title: 'Resistance and voltage drop',
  why: 'A drop that the circuit cannot bear shows only when the board is warm and loaded.',
  stage: 'specification',
  version: 1,
  reads: { conductors, service: serviceTemperature },
  judge({ conductors: rows, service }) {
    const parts = rows.map((row, index) => judgeRow(row, index, service))
    const deciding = decidingPart(parts)
    const row = deciding && rows[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'conductors',
      limit: rows.some((each) => each.dropMostMv !== undefined)
        ? 'The drop each conductor is allowed'
        : 'No conductor names a drop; the resistances are for information',
      working: row ? workingOf(row, service) : [],
      sources: [
        COPPER_RESISTANCE.source,
        published(
          'Wilson, The Circuit Designer’s Companion, p. 59: finished tracks vary up to two to one (secondary copy)',
        ),
      ],
      notes: ['Copper as drawn: plating, finish and etching change a finished track by up to two to one.'],
    })
  },
})

const warmC = (row: ConductorRow, serviceC: number): number => serviceC + riseByIpc2221(row, row.currentA)
const dropMv = (row: ConductorRow, serviceC: number): number =>
  row.currentA * conductorResistanceOhm(row, warmC(row, serviceC)) * 1e3

function judgeRow(row: ConductorRow, index: number, serviceC: number): Part {
  const found = dropMv(row, serviceC)
  const ohm = conductorResistanceOhm(row, warmC(row, serviceC))
  const says = `${formatQuantity(ohm * 1e3, 'mΩ', 3)} at ${formatQuantity(warmC(row, serviceC), '°C', 3)}, a drop of ${formatQuantity(found, 'mV', 3)}`
  const measured = {
    resistance: measure(ohm * 1e3, 'mΩ'),
    at: measure(warmC(row, serviceC), '°C'),
    drop: measure(found, 'mV'),
  }
  if (row.dropMostMv === undefined) return { subject: row.net, verdict: 'meets', found: says, measured }
  const limit = row.dropMostMv
  const part = partOn({
    subject: row.net,
    measured,
    found: `${says}; allowed ${formatQuantity(limit, 'mV')}`,
    margin: { found, limit, unit: 'mV', direction: 'at most', guardBand: GUARD_SHARE * limit },
  })
  if (part.verdict === 'meets') return part
  // A wider track runs cooler too, so width in proportion to the drop is on the safe side.
  const value = stepAbove((row.widthMm * found) / (limit * (1 - GUARD_SHARE)), WIDTH_STEP_MM)
  if (value > WIDEST_CONDUCTOR_MM) {
    const says = `${row.net}: no conductor of ${WIDEST_CONDUCTOR_MM} mm or less keeps the drop: shorten it, use thicker copper, or use a bar or a wire.`
    return { ...part, remedy: { says } }
  }
  const remedy: Remedy = {
    says: `${row.net}: widen the conductor to ${formatQuantity(value, 'mm')}.`,
    cell: { parameter: conductors.key, row: index, column: 'widthMm', value },
  }
  return { ...part, remedy }
}

function workingOf(row: ConductorRow, serviceC: number): WorkingLine[] {
  const temperatureC = warmC(row, serviceC)
  return [
    {
      label: `Resistance of ${row.net}`,
      formula: 'R = ρ · L/(w · t) · (1 + α · (T − 20 °C)), ρ = 1.724·10⁻⁸ Ω·m, α = 0.00393/K',
      numbers: `L = ${formatQuantity(row.lengthMm, 'mm')}, w = ${formatQuantity(row.widthMm, 'mm')}, t = ${formatQuantity(row.copperUm, 'µm')}, T = ${formatQuantity(temperatureC, '°C')} (service and rise by IPC-2221)`,
      result: formatQuantity(conductorResistanceOhm(row, temperatureC) * 1e3, 'mΩ'),
    },
    {
      label: 'Drop',
      formula: 'I · R',
      numbers: `${formatQuantity(row.currentA, 'A')} · R`,
      result: formatQuantity(dropMv(row, serviceC), 'mV'),
    },
  ]
}
