import type { ReactNode } from 'react'
import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { coverageMin, holeRiseMin, wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Lot, LotTest } from '@/shared/records/lot'
import { textsOf } from '@/shared/records/readings'
import type { TestMethod } from '@/shared/methods/test-method'
import type { TestMethodKey } from '@/shared/methods/test-methods'
import { against, platingDrawn, type Drawn } from './readings-drawn'
import { WettingCurves } from './wetting-curves'

const MAX_DOTS = 1000

interface TestPicturesProps {
  view: ProgrammeView
  lot: Lot
  test: LotTest
  method: TestMethod & { readonly key: TestMethodKey }
}

type Picture = (props: TestPicturesProps) => ReactNode

/** Dots against their limit. */
const dots = (drawn: Drawn): Picture =>
  function Dots({ view, lot, test, method }) {
    const column = method.columns[method.charted]
    if (column?.kind !== 'number') return null
    return (
      <div className="picture-row">
        {drawn(test, lot, method.charted, view.state.facts).map(({ name, values, limits, bound }) => (
          <ReadingsAgainstLimit
            key={name}
            title={[column.label, name && name.toLowerCase(), thinnedMessage(values.length)]
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
const outcomes: Picture = ({ test, method }) => {
  const column = method.columns[method.charted]
  const counts = new Map<string, number>()
  for (const outcome of textsOf(test.readings, method.charted))
    counts.set(outcome, (counts.get(outcome) ?? 0) + 1)
  const said = (outcome: string) => (column ? kindOf(column).inSentence(column, outcome) : outcome)
  return <p>{[...counts].map(([outcome, count]) => `${count} ${said(outcome)}`).join(', ')}</p>
}

const PICTURES: Readonly<Record<TestMethodKey, Picture>> = {
  'rotary-dip': dots(against(wettingTimeMax)),
  'dip-and-look': dots(against(coverageMin)),
  'plated-hole-rise': dots(against(holeRiseMin)),
  'plating-thickness': dots(platingDrawn),
  'wetting-balance': ({ test }) => <WettingCurves test={test} />,
  'solder-float': outcomes,
  'receiving-check': outcomes,
}

/** A test's readings drawn: curves, dots against their limit, or outcomes counted. */
export const TestPictures = (props: TestPicturesProps) => PICTURES[props.method.key](props)

/** Too many dots are drawn as so many at even ranks: the ends and the shape stay. */
function thinned(values: readonly number[]): readonly number[] {
  if (values.length <= MAX_DOTS) return values
  const rising = [...values].sort((one, other) => one - other)
  return Array.from(
    { length: MAX_DOTS },
    (_, dot) => rising[Math.round((dot * (rising.length - 1)) / (MAX_DOTS - 1))] ?? 0,
  )
}

const thinnedMessage = (count: number): string =>
  count > MAX_DOTS ? `${MAX_DOTS} of ${count} at even ranks` : ''
