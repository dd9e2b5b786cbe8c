import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { COPPER_RESISTANCE } from '@/shared/materials/conductor-current-laws'
import { published } from '@/shared/sources/provenance'
import { conductorResistanceOhm } from '@/shared/physics/conductor-resistance'
import { riseByIpc2221 } from '@/shared/physics/conductor-current'
import { asFinished, boardCopper } from '@/shared/plan/board-copper'
import { conductorDropGuard } from '@/shared/plan/limits/specification-guards'
import { conductors, WIDEST_CONDUCTOR_MM, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { boardCopperReads } from '@/shared/rules/board-copper-reads'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { rule } from '@/shared/rules/rule'

const WIDTH_STEP_MM = 0.05

export const conductorDrop = rule({
  id: 'conductor-drop',
  title: 'Resistance and voltage drop',
  why: 'A drop that the circuit cannot bear shows only when the board is warm and loaded.',
  formula: 'I · ρ · L/(w · t) · (1 + α · (T − 20 °C)) ≤ drop allowed, t what the finished layer has at least',
  stage: 'specification',
  version: 3,
  reads: {
    conductors,
    ...boardCopperReads,
    service: serviceTemperature,
    guard: conductorDropGuard,
  },
  judge({ conductors: rows, service, guard, ...board }) {
    if (rows.every((row) => row.dropMostMv === undefined))
      return notApplicable('No conductor names a drop that it is allowed.')
    const copper = boardCopper(board)
    const parts = rows.map((row, index) =>
      partOrContradiction(row.net, () =>
        judgeRow(asFinished(row, copper), index, service, guard.value / 100),
      ),
    )
    const deciding = decidingPart(parts)
    const row = deciding && rows[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'conductors',
      limit: 'The drop each conductor is allowed',
      working: row && deciding.margin ? workingOf(asFinished(row, copper), service) : [],
      sources: [
        COPPER_RESISTANCE.source,
        COPPER_FOILS[copper.foil].source,
        published(
          'Wilson, The Circuit Designer’s Companion (2011), p. 59: finished tracks vary up to two to one',
        ),
      ],
      notes: [
        'The copper counted is the least of what the row counts on and what the finished layer has; the width is as drawn.',
      ],
    })
  },
})

const warmC = (row: ConductorRow, serviceC: number): number => serviceC + riseByIpc2221(row, row.currentA)
const dropMv = (row: ConductorRow, serviceC: number): number =>
  row.currentA * conductorResistanceOhm(row, warmC(row, serviceC)) * 1e3

function judgeRow(row: ConductorRow, index: number, serviceC: number, share: number): Part {
  const found = dropMv(row, serviceC)
  const ohm = conductorResistanceOhm(row, warmC(row, serviceC))
  const message = `${formatQuantity(ohm * 1e3, 'mΩ', 3)} at ${formatQuantity(warmC(row, serviceC), '°C', 3)}, a drop of ${formatQuantity(found, 'mV', 3)}`
  const measured = {
    resistance: measure(ohm * 1e3, 'mΩ'),
    at: measure(warmC(row, serviceC), '°C'),
    drop: measure(found, 'mV'),
  }
  if (row.dropMostMv === undefined)
    return { subject: row.net, verdict: 'not applicable', found: `${message}; no drop is named`, measured }
  const limit = row.dropMostMv
  const part = partOn({
    subject: row.net,
    measured,
    found: `${message}; allowed ${formatQuantity(limit, 'mV')}`,
    margin: { found, limit, unit: 'mV', direction: 'at most', guardBand: share * limit },
  })
  if (part.verdict === 'meets') return part
  // A wider track runs cooler too, so width in proportion to the drop is on the safe side.
  const value = stepAbove((row.widthMm * found) / (limit * (1 - share)), WIDTH_STEP_MM)
  if (value > WIDEST_CONDUCTOR_MM) {
    const message = `${row.net}: no conductor of ${WIDEST_CONDUCTOR_MM} mm or less keeps the drop: shorten it, use thicker copper, or use a bar or a wire.`
    return { ...part, remedy: { message } }
  }
  const remedy: Remedy = {
    message: `${row.net}: widen the conductor to ${formatQuantity(value, 'mm')}.`,
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
