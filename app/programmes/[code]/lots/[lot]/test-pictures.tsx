import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Lot, LotTest } from '@/shared/records/lot'
import { textsOf } from '@/shared/records/readings'
import type { TestMethod } from '@/shared/methods/test-method'
import { readingsDrawn } from './readings-drawn'
import { WettingCurves } from './wetting-curves'

const MOST_DOTS = 1000

interface TestPicturesProps {
  view: ProgrammeView
  lot: Lot
  test: LotTest
  method: TestMethod
}

/** A test's readings drawn: curves, dots against their limit, or outcomes counted. */
export function TestPictures({ view, lot, test, method }: TestPicturesProps) {
  if (test.method === 'wetting-balance') return <WettingCurves test={test} />
  const column = method.columns[method.charted]
  if (column?.kind !== 'number') return <Outcomes test={test} charted={method.charted} method={method} />
  const drawn = readingsDrawn(test, lot, method.charted, view.state.facts)
  return (
    <div className="picture-row">
      {drawn.map(({ name, values, limits, bound }) => (
        <ReadingsAgainstLimit
          key={name}
          title={[column.label, name && name.toLowerCase(), thinnedSays(values.length)]
            .filter(Boolean)
            .join(', ')}
          characteristic={column.label}
          unit={column.unit}
          readings={thinned(values)}
          limits={limits}
          {...(bound && { bound })}
        />
      ))}
    </div>
  )
}

/** How many specimens came to which outcome. */
function Outcomes({ test, charted, method }: { test: LotTest; charted: string; method: TestMethod }) {
  const column = method.columns[charted]
  const counts = new Map<string, number>()
  for (const outcome of textsOf(test.readings, charted)) counts.set(outcome, (counts.get(outcome) ?? 0) + 1)
  const said = (outcome: string) => (column ? kindOf(column).inSentence(column, outcome) : outcome)
  return <p>{[...counts].map(([outcome, count]) => `${count} ${said(outcome)}`).join(', ')}</p>
}

/** Too many dots are drawn as so many at even ranks: the ends and the shape stay. */
function thinned(values: readonly number[]): readonly number[] {
  if (values.length <= MOST_DOTS) return values
  const rising = [...values].sort((one, other) => one - other)
  return Array.from(
    { length: MOST_DOTS },
    (_, dot) => rising[Math.round((dot * (rising.length - 1)) / (MOST_DOTS - 1))] ?? 0,
  )
}

const thinnedSays = (count: number): string =>
  count > MOST_DOTS ? `${MOST_DOTS} of ${count} at even ranks` : ''
