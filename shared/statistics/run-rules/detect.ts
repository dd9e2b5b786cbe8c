import type { Chart, ChartPhase } from '@/shared/statistics/charts/chart'
import { beyondZone, insideZone, outsideLimits, sideOfCentre, step, turn } from './classify'
import { crowdsOf } from './crowds'
import type { RunRule } from './rule'
import { indices, runsOfAtLeast } from './runs'
import type { Signal, SignalDirection } from './signal'

/**
 * Every signal that the rules give on a chart, in the order in which they would
 * have sounded. Comparisons are strict: a point on a limit or on the centre line
 * is not beyond it, and equal neighbours make neither a rise nor a fall. A
 * pattern never reaches from one phase into the next.
 */
export function detectSignals(chart: Chart, rules: readonly RunRule[]): Signal[] {
  const signals = rules.flatMap((rule) => {
    const look = patternFinder(chart, rule)
    return chart.phases.flatMap(look)
  })
  return signals.sort((one, other) => one.soundedAt - other.soundedAt)
}

type FindInPhase = (phase: ChartPhase) => Signal[]
type Directions = readonly [above: SignalDirection, below: SignalDirection]

const SIDES: Directions = ['above', 'below']
const SLOPES: Directions = ['rising', 'falling']
const EITHER: Directions = ['either', 'either']

function patternFinder(chart: Chart, { id, pattern }: RunRule): FindInPhase {
  switch (pattern.shape) {
    case 'beyond-limits':
      return runFinder(id, 1, outsideLimits(chart), SIDES)
    case 'one-side':
      return runFinder(id, pattern.inARow, sideOfCentre(chart), SIDES)
    case 'trend':
      return runFinder(id, pattern.inARow, step(chart), SLOPES, 1)
    case 'alternating':
      return runFinder(id, pattern.inARow, turn(step(chart)), EITHER, 2)
    case 'inside-zone':
      return runFinder(id, pattern.inARow, insideZone(chart, pattern.sigmas), EITHER)
    case 'outside-zone':
      return runFinder(id, pattern.inARow, beyondZone(chart, pattern.sigmas).map(Math.abs), EITHER)
    case 'beyond-zone': {
      const classes = beyondZone(chart, pattern.sigmas)
      return ({ from, to }) =>
        ([1, -1] as const).flatMap((kind) =>
          crowdsOf(kind, pattern, classes, from, to).map((crowd) => ({
            ruleId: id,
            direction: kind > 0 ? SIDES[0] : SIDES[1],
            ...crowd,
          })),
        )
    }
  }
}

/** Runs of classes as signals. A class that compares a point with those before it reaches back to them. */
function runFinder(
  ruleId: string,
  inARow: number,
  classes: Int8Array,
  [above, below]: Directions,
  reachBack = 0,
): FindInPhase {
  const min = inARow - reachBack
  return ({ from, to }) =>
    runsOfAtLeast(min, classes, from + reachBack, to).map(({ first, last, kind }) => ({
      ruleId,
      direction: kind > 0 ? above : below,
      soundedAt: first + min - 1,
      points: indices(first - reachBack, last),
    }))
}
