import type { Chart, ChartPhase } from './chart'

/** The start of a stretch with limits of its own: a new bath, a mended machine. */
export type PhaseStart = { name: string; from: number }

/**
 * Charts a series in phases, each with its own limits, as one chart. `build`
 * draws one phase from its readings or subgroups. Phases start at the given
 * indices of the series; the first must start at 0, and they must rise.
 */
export function chartInPhases<Item>(
  series: readonly Item[],
  starts: readonly PhaseStart[],
  build: (part: readonly Item[], phase: PhaseStart) => Chart,
): Chart {
  if (starts[0]?.from !== 0) throw new RangeError('The first phase must start at the first reading.')
  const parts = starts.map((start, index) => {
    const next = starts[index + 1]?.from ?? series.length
    if (!(next > start.from && next <= series.length))
      throw new RangeError(
        `Phase “${start.name}” holds no reading: it starts at ${start.from}, the next at ${next}.`,
      )
    const part = next - start.from === series.length ? series : series.slice(start.from, next)
    return { start, chart: build(part, start) }
  })
  return parts.map(shifted).reduce(joined)
}

function shifted({ start, chart }: { start: PhaseStart; chart: Chart }): Chart {
  return {
    ...chart,
    positions: start.from === 0 ? chart.positions : chart.positions.map((position) => position + start.from),
    phases: chart.phases.map((phase) => ({ ...phase, name: start.name })),
  }
}

function joined(before: Chart, after: Chart): Chart {
  const offset = before.values.length
  const later = (phase: ChartPhase): ChartPhase => ({
    ...phase,
    from: phase.from + offset,
    to: phase.to + offset,
  })
  return {
    kind: before.kind,
    behaviour: before.behaviour,
    positions: Uint32Array.from([...before.positions, ...after.positions]),
    values: endToEnd(before.values, after.values),
    centre: endToEnd(before.centre, after.centre),
    sigma: endToEnd(before.sigma, after.sigma),
    lower: endToEnd(before.lower, after.lower),
    upper: endToEnd(before.upper, after.upper),
    phases: [...before.phases, ...after.phases.map(later)],
  }
}

function endToEnd(before: Float64Array, after: Float64Array): Float64Array {
  const column = new Float64Array(before.length + after.length)
  column.set(before)
  column.set(after, before.length)
  return column
}
