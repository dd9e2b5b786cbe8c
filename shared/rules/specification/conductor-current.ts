import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { IPC_2152_RISE, IPC_2221_CURRENT } from '@/shared/materials/conductor-current-laws'
import { currentByIpc2221, riseByIpc2152, riseByIpc2221 } from '@/shared/physics/conductor-current'
import { CONDUCTOR_LAWS, hottestLaw, lawsFor, type ConductorLaw } from '@/shared/physics/conductor-laws'
import { asFinished, boardCopper } from '@/shared/plan/board-copper'
import { conductorRiseMax } from '@/shared/plan/limits/conductors'
import { conductorRiseGuard } from '@/shared/plan/limits/specification-guards'
import {
  conductorMethod,
  conductors,
  WIDEST_CONDUCTOR_MM,
  type ConductorRow,
} from '@/shared/plan/parameters/conductors'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { boardCopperReads } from '@/shared/rules/board-copper-reads'
import { measure } from '@/shared/rules/measure'
import { decidingPart, judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'

const WIDTH_STEP_MM = 0.05
const MM_PER_MIL = 0.0254

export const conductorCurrent = rule({
  id: 'conductor-current',
  title: 'Conductor width for its current',
  why: 'A conductor that runs hot ages the laminate and the joints at its ends and starves the next solder joint of strength.',
  formula:
    'IPC-2221: ΔT = (I/(k · A^0.725))^(1/0.44); IPC-2152: ΔT = K · I^a · W^b · T^c; A of the copper that the finished layer has at least; the greater ΔT ≤ most',
  stage: 'specification',
  version: 3,
  reads: {
    conductors,
    ...boardCopperReads,
    rise: conductorRiseMax,
    method: optional(conductorMethod),
    guard: conductorRiseGuard,
  },
  judge({ conductors: rows, rise, method, guard, ...board }) {
    const copper = boardCopper(board)
    const methods = lawsFor(method)
    const parts = rows.map((row, index) =>
      partOrContradiction(row.net, () =>
        judgeRow(asFinished(row, copper), index, { riseK: rise.value, share: guard.value / 100, methods }),
      ),
    )
    const deciding = decidingPart(parts)
    const row = deciding && rows[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'conductors',
      limit: `At most ${formatQuantity(rise.value, 'K')} over the board (${rise.document})`,
      working: row && deciding.margin ? workingOf(asFinished(row, copper), rise.value) : [],
      sources: [IPC_2221_CURRENT.source, IPC_2152_RISE.source, COPPER_FOILS[copper.foil].source],
      notes: [
        'The copper counted is the least of what the row counts on and what the finished layer has.',
        method
          ? `Judged by ${CONDUCTOR_LAWS[method].label}; the other fit is shown beside it.`
          : 'No method is chosen: the fit that gives the greater rise decides.',
        'IPC-2221 halves the current of internal conductors by decree; measured ones run about as warm as external ones.',
        'Both fits are for one conductor in still air. Add the currents and sections of conductors that run close together, and look at the narrowest place.',
        ...outsideChart(rows),
      ],
    })
  },
})

interface Terms {
  readonly riseK: number
  /** Of the rise, kept free. */
  readonly share: number
  readonly methods: readonly ConductorLaw[]
}

function judgeRow(row: ConductorRow, index: number, { riseK, share, methods }: Terms): Part {
  const method = hottestLaw(row, row.currentA, methods)
  const message = (key: ConductorLaw): string =>
    `${formatQuantity(CONDUCTOR_LAWS[key].rise(row, row.currentA), 'K', 3)} by ${CONDUCTOR_LAWS[key].label} (carries ${formatQuantity(CONDUCTOR_LAWS[key].current(row, riseK), 'A', 3)})`
  const part = partOn({
    subject: row.net,
    measured: {
      current: measure(row.currentA, 'A'),
      width: measure(row.widthMm, 'mm'),
      copper: measure(row.copperUm, 'µm'),
      riseByIpc2221: measure(CONDUCTOR_LAWS['ipc-2221'].rise(row, row.currentA), 'K'),
      carriedByIpc2221: measure(CONDUCTOR_LAWS['ipc-2221'].current(row, riseK), 'A'),
      riseByIpc2152: measure(CONDUCTOR_LAWS['ipc-2152'].rise(row, row.currentA), 'K'),
      carriedByIpc2152: measure(CONDUCTOR_LAWS['ipc-2152'].current(row, riseK), 'A'),
    },
    found: `${formatQuantity(row.currentA, 'A')} in ${formatQuantity(row.widthMm, 'mm')} of ${formatQuantity(row.copperUm, 'µm', 3)} warm it by ${message('ipc-2221')}, ${message('ipc-2152')}`,
    margin: {
      found: CONDUCTOR_LAWS[method].rise(row, row.currentA),
      limit: riseK,
      unit: 'K',
      direction: 'at most',
      guardBand: share * riseK,
    },
  })
  if (part.verdict === 'meets') return part
  const aimK = riseK * (1 - share)
  const value = stepAbove(
    Math.max(...methods.map((key) => CONDUCTOR_LAWS[key].width(row, row.currentA, aimK))),
    WIDTH_STEP_MM,
  )
  if (value > WIDEST_CONDUCTOR_MM) {
    const message = `${row.net}: no conductor of ${WIDEST_CONDUCTOR_MM} mm or less stays cool enough: use thicker copper, share the current, or use a bar or a wire.`
    return { ...part, remedy: { message } }
  }
  const remedy: Remedy = {
    message: `${row.net}: widen the conductor to ${formatQuantity(value, 'mm')}.`,
    cell: { parameter: conductors.key, row: index, column: 'widthMm', value },
  }
  return { ...part, remedy }
}

function workingOf(row: ConductorRow, riseK: number): WorkingLine[] {
  const widthMil = row.widthMm / MM_PER_MIL
  const thickMil = row.copperUm / 25.4
  const section = `A = ${formatQuantity(widthMil, '1')} mil · ${formatQuantity(thickMil, '1')} mil = ${formatQuantity(widthMil * thickMil, '1')} mil²`
  const k = IPC_2221_CURRENT.factor[row.layer]
  return [
    {
      label: `Current of ${row.net} by IPC-2221`,
      formula: 'I = k · ΔT^0.44 · A^0.725, ΔT in K, A in square mils',
      numbers: `k = ${k}, ΔT = ${formatQuantity(riseK, 'K')}, ${section}`,
      result: formatQuantity(currentByIpc2221(row, riseK), 'A'),
    },
    {
      label: 'Rise by IPC-2221',
      formula: 'ΔT = (I/(k · A^0.725))^(1/0.44)',
      numbers: `I = ${formatQuantity(row.currentA, 'A')}`,
      result: formatQuantity(riseByIpc2221(row, row.currentA), 'K'),
    },
    {
      label: 'Rise by IPC-2152',
      formula: 'ΔT = K · I^a · W^b · T^c, W and T in mils; constants by layer and weight of copper',
      numbers: `I = ${formatQuantity(row.currentA, 'A')}, W = ${formatQuantity(widthMil, '1')}, T = ${formatQuantity(thickMil, '1')}`,
      result: formatQuantity(riseByIpc2152(row, row.currentA), 'K'),
    },
  ]
}

function outsideChart(rows: readonly ConductorRow[]): string[] {
  const outside = rows.filter(
    (row) =>
      row.currentA > IPC_2221_CURRENT.maxCurrentA[row.layer] ||
      row.widthMm > IPC_2221_CURRENT.maxWidthMil * MM_PER_MIL,
  )
  if (outside.length === 0) return []
  return [
    `Outside the chart that IPC-2221 was fitted to (35 A, 17.5 A internal, 400 mil): ${outside.map((row) => row.net).join(', ')}. Have these measured.`,
  ]
}
