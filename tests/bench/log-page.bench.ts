/*
 * How long the chart of a log of 50,000 readings takes from nothing known to its
 * drawing, how much it weighs, and how little of that is due to their number.
 * Run: npx tsx tests/bench/log-page.bench.ts
 */
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { PanelPlot } from '@/app/charts/panel-plot'
import type { Log } from '@/shared/records/log'
import { CHART_OPTIONS } from '@/shared/plan/parameters/control-charts'
import { logChart, specifiedCharting } from '@/shared/charts/log-chart'

const READINGS = 50_000
const ROUNDS = 5
const MAX_MS = 400
const MAX_BYTES = 150_000

const logOf = (count: number): Log => ({
  id: 'log',
  code: 'BATH-1',
  characteristic: 'bath-temperature',
  line: 'Line 1',
  machine: 'Wave 1',
  instrumentId: null,
  readings: {
    count,
    columns: {
      at: Array.from({ length: count }, (_, index) => Date.UTC(2026, 0, 1) + index * 60_000),
      bathC: Array.from(
        { length: count },
        (_, index) => 250 + 2 * Math.sin(index * 12.9898) * Math.cos(index * 78.233),
      ),
    },
  },
})

const drawn = (log: Log, chart: (typeof CHART_OPTIONS)[number]['value']): string => {
  const { choice, rules } = specifiedCharting(log, undefined)
  const {
    panels,
    label,
    unit,
    choice: shown,
  } = logChart(log, undefined, { choice: { ...choice, chart }, rules })
  return panels
    .map((panel) =>
      renderToStaticMarkup(
        createElement(PanelPlot, { log: log.code, label, unit, panel, choice: shown, rules }),
      ),
    )
    .join('')
}

let failed = false
for (const { value: chart } of CHART_OPTIONS) {
  let best = Infinity
  let bytes = 0
  for (let round = 0; round < ROUNDS; round++) {
    const log = logOf(READINGS)
    const start = performance.now()
    bytes = drawn(log, chart).length
    best = Math.min(best, performance.now() - start)
  }
  const tooMuch = best > MAX_MS || bytes > MAX_BYTES
  failed ||= tooMuch
  console.log(
    `${chart}: ${best.toFixed(0)} ms (wanted: under ${MAX_MS}), ${(bytes / 1000).toFixed(0)} kB (wanted: under ${MAX_BYTES / 1000}), ${(bytes / drawn(logOf(READINGS / 10), chart).length).toFixed(2)} times that of a tenth of the readings`,
  )
}
process.exitCode = failed ? 1 : 0
