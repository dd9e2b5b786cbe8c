import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { LogOverTime } from '@/app/drawing/log-over-time'
import type { RunMark } from '@/app/drawing/run-marks'
import { RunsAgainstReadings } from '@/app/programmes/[code]/logs/[log]/runs-against-readings'
import type { RunOfLog } from '@/shared/charts/runs-of-log'

const HOUR = 3_600_000
const drawn = (runs?: readonly RunMark[]): string =>
  renderToStaticMarkup(
    createElement(LogOverTime, {
      title: 'L-1 over time',
      characteristic: 'Flux density',
      unit: 'g/ml',
      readings: [0, 1, 2].map((day) => ({ at: day * 24 * HOUR, value: 0.82 + day / 1000 })),
      runs,
    }),
  )

describe('runs on the picture of a log', () => {
  const runs: RunMark[] = [
    { at: 2 * HOUR, is: 'inside' },
    { at: 30 * HOUR, is: 'outside' },
    { at: 90 * HOUR, is: 'not shown' },
  ]
  test('each kind has a shape and words of its own, and the description counts them', () => {
    const markup = drawn(runs)
    expect(markup).toContain('run with a reading inside, in time before it')
    expect(markup).toContain('run on a reading outside, not answered')
    expect(markup).toContain('run that no reading speaks for')
    expect(markup).toMatch(
      /<desc[^>]*>[^<]*3 soldering runs along the time axis: 1 inside, 1 outside, 1 not shown\./,
    )
    const shapes = [...markup.matchAll(/class="ink-\w+ outlined" stroke-width="1\.6" d="([^"]+)"/g)]
    expect(new Set(shapes.map(([, shape]) => shape)).size).toBe(3)
  })
  test('a run after the last reading still lies in the frame', () => {
    const places = [...drawn(runs).matchAll(/class="ink-tin outlined-filled"[^>]*d="M([\d.]+)/g)]
    expect(Number(places[0]?.[1])).toBeLessThan(900)
    expect(Number(places[0]?.[1])).toBeGreaterThan(600)
  })
  test('without a run nothing is drawn and nothing is said', () => {
    expect(drawn()).not.toContain('soldering run')
    expect(drawn([])).toBe(drawn())
  })
})

describe('the runs concerned, listed', () => {
  const run = (doneOn: string, over: Partial<RunOfLog> = {}): RunOfLog => ({
    at: Date.parse(doneOn),
    is: 'inside',
    message: undefined,
    measured: undefined,
    run: {
      id: doneOn,
      doneOn,
      worker: 'A. Ward',
      skill: 'machine-soldering',
      begunAtH: undefined,
      assemblies: 24,
      serials: undefined,
      lots: undefined,
      line: 'Line 1',
    },
    ...over,
  })
  const listed = (runs: readonly RunOfLog[]): string =>
    renderToStaticMarkup(createElement(RunsAgainstReadings, { log: 'FD-1', of: { maxHours: 24, runs } }))

  test('those not inside, each with the reason; where all are inside, that', () => {
    const late = run('2026-12-01', { is: 'not shown', message: 'no reading in time before the work' })
    expect(listed([run('2026-02-02'), late])).toContain('no reading in time before the work')
    expect(listed([run('2026-02-02'), late])).toContain('1 of 2 soldering runs')
    expect(listed([run('2026-02-02')])).toContain('The one soldering run of this line')
    expect(listed([run('2026-02-02')])).not.toContain('<table')
    expect(listed([])).toContain('No run of soldering by machine is recorded')
  })
})
