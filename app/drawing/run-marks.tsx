import { pointShape, type PointShape } from './point-shape'

/** A run of work on the time axis: what became of it by the readings before it. */
export type RunMark = { at: number; is: 'inside' | 'outside' | 'not shown' }

/** Shape and ink of each, and its words below the plot: no mark speaks by colour alone. */
const RUN_MARKS: Readonly<Record<RunMark['is'], { shape: PointShape; ink: string; message: string }>> = {
  inside: { shape: 'triangle', ink: 'ink-mask', message: 'run with a reading inside, in time before it' },
  outside: { shape: 'cross', ink: 'ink-carmine', message: 'run on a reading outside, not answered' },
  'not shown': { shape: 'square', ink: 'ink-tin', message: 'run that no reading speaks for' },
}

/** Room that the words below the plot take. */
export const RUN_LEGEND_HEIGHT = 22

/** Runs in the picture, in words: "10 soldering runs: 9 inside, 1 not shown." */
export function runsDescribed(runs: readonly RunMark[]): string {
  const counts = (Object.keys(RUN_MARKS) as RunMark['is'][]).flatMap((is) => {
    const count = runs.filter((run) => run.is === is).length
    return count === 0 ? [] : [`${count} ${is}`]
  })
  return `${runs.length} soldering ${runs.length === 1 ? 'run' : 'runs'} along the time axis: ${counts.join(', ')}.`
}

/** Runs along the foot of a plot, and what each mark says below. */
export function RunMarks({
  runs,
  x,
  y,
  legend: { left, top },
}: {
  runs: readonly RunMark[]
  x: (instant: number) => number
  y: number
  legend: { left: number; top: number }
}) {
  const kinds = (Object.keys(RUN_MARKS) as RunMark['is'][]).filter((is) => runs.some((run) => run.is === is))
  return kinds.map((is, position) => {
    const { shape, ink, message } = RUN_MARKS[is]
    return (
      <g key={is}>
        <path
          className={`${ink} outlined-filled`}
          strokeWidth="1.6"
          d={runs
            .filter((run) => run.is === is)
            .map(({ at }) => pointShape(shape, x(at), y, 4))
            .join('')}
        />
        <g transform={`translate(${left + position * 290} ${top})`}>
          <path className={`${ink} outlined`} strokeWidth="1.6" d={pointShape(shape, 5, -4, 4)} />
          <text x={16}>{message}</text>
        </g>
      </g>
    )
  })
}
