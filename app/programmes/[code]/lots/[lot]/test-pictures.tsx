import type { ReactNode } from 'react'
import { MAX_DOTS, thinned } from '@/app/drawing/thinned-dots'
import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { TestMethod } from '@/shared/methods/test-method'
import type { TestMethodKey } from '@/shared/methods/test-methods'
import { DRAWN } from '@/app/lots/readings-drawn'
import { outcomeCounts } from '@/app/lots/outcomes-in-words'
import { WettingCurves } from './wetting-curves'

interface TestPicturesProps {
  view: ProgrammeView
  lot: Lot
  test: LotTest
  method: TestMethod & { readonly key: TestMethodKey }
}

type Picture = (props: TestPicturesProps) => ReactNode

/** Dots against their limit; those of the only test of its kind lead the page already. */
function Dots({ view, lot, test, method }: TestPicturesProps) {
  const column = method.columns[method.charted]
  const drawn = DRAWN[method.key]
  const alone = !lot.tests.some(
    (other) =>
      other !== test &&
      other.method === test.method &&
      other.conditions['deposit'] === test.conditions['deposit'],
  )
  if (column?.kind !== 'number' || !drawn || alone) return null
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
const outcomes: Picture = ({ test, method }) => <p>{outcomeCounts(method, test)}</p>

const PICTURES: Readonly<Record<TestMethodKey, Picture>> = {
  'rotary-dip': Dots,
  'dip-and-look': Dots,
  'plated-hole-rise': Dots,
  'plating-thickness': Dots,
  'wetting-balance': ({ test }) => <WettingCurves test={test} />,
  'solder-float': outcomes,
  'receiving-check': outcomes,
}

/** A test's readings drawn: curves, dots against their limit, or outcomes counted. */
export const TestPictures = (props: TestPicturesProps) => PICTURES[props.method.key](props)

const thinnedMessage = (count: number): string =>
  count > MAX_DOTS ? `${MAX_DOTS} of ${count} at even ranks` : ''
