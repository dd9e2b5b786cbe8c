import { useId, type ReactNode } from 'react'
import { scaleLinear } from 'd3-scale'
import { isOutside, readingsSummary, type ReadingLimits } from '@/shared/lot-tests/readings-summary'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { extentOf } from './extent'
import { NumbersTable } from './numbers-table'
import { MarkRows, type StripMark } from './strip-marks'
import { StripPlot } from './strip-plot'
import { axisTitle, numberTicks } from './ticks'

/** One lot on the strip: its readings, and what stands beside them. */
export interface StripRow {
  readonly key: string
  /** In text: "Lot B-07, accepted". */
  readonly name: string
  /** Beside its dots; the same with its link. */
  readonly label: ReactNode
  readonly receivedOn: string
  readonly decision: string
  readonly counted: readonly number[]
  readonly setAside: readonly number[]
}

interface LotStripProps {
  readonly title: string
  /** What was read, such as "Wetting time". */
  readonly characteristic: string
  readonly unit: Unit
  readonly limits: ReadingLimits
  readonly bound: { readonly value: number; readonly name: string } | undefined
  readonly own: StripRow
  /** Oldest first; the newest stands next to the lot. */
  readonly earlier: readonly StripRow[]
}

/** Room at both ends, in hundredths of the width, so that no number at an end leaves the picture. */
const ENDS: [number, number] = [7, 93]

/** Every reading of a lot as a dot, those of earlier lots above it in small, all on one scale that takes the width there is. */
export function LotStrip(props: LotStripProps) {
  const { title, characteristic, unit, limits, bound, own, earlier } = props
  const id = useId()
  const rows = [...earlier, own]
  const ends = [limits.atLeast, limits.atMost, bound?.value].filter((value) => value !== undefined)
  const x = scaleLinear(
    extentOf([ends, ...rows.flatMap(({ counted, setAside }) => [counted, setAside])]),
    ENDS,
  ).nice(5)
  const place = { x, ticks: numberTicks(x, 5), limits }
  const said = (value: number) => formatQuantity(value, unit)
  const found = readingsSummary(own.counted, limits)
  const marks: StripMark[] = [
    ...(found ? [{ at: x(found.mean), text: `mean ${said(found.mean)}` }] : []),
    ...(found?.worst === undefined ? [] : [{ at: x(found.worst), text: `worst ${said(found.worst)}` }]),
    ...(bound ? [{ at: x(bound.value), text: `shown ${said(bound.value)}` }] : []),
  ]
  const limitMarks: StripMark[] = [
    ...(limits.atLeast === undefined
      ? []
      : [{ at: x(limits.atLeast), text: `at least ${said(limits.atLeast)}` }]),
    ...(limits.atMost === undefined
      ? []
      : [{ at: x(limits.atMost), text: `at most ${said(limits.atMost)}` }]),
  ]
  return (
    <figure className="drawing lot-strip" aria-labelledby={id}>
      <figcaption id={id}>{title}</figcaption>
      <ol className="lot-strip-rows">
        {limitMarks.length > 0 && (
          <li className="lot-strip-marks" aria-hidden="true">
            <MarkRows marks={limitMarks} tip="down" />
          </li>
        )}
        {rows.map((row) => (
          <li key={row.key} className={row === own ? 'lot-strip-own' : undefined}>
            <div className="lot-strip-label">{row.label}</div>
            <StripPlot
              {...place}
              size={row === own ? 'large' : 'small'}
              says={rowInWords(row, limits, unit)}
              counted={row.counted}
              setAside={row.setAside}
            />
          </li>
        ))}
        <li className="lot-strip-marks" aria-hidden="true">
          <MarkRows
            marks={marks}
            tip="up"
            ticks={place.ticks}
            title={axisTitle(characteristic, printedUnit(unit))}
          />
        </li>
      </ol>
      <Legend rows={rows} limits={limits} />
      <NumbersTable
        title={title}
        folded
        narrow="cards"
        numbers={{
          columns: [
            { label: 'Lot' },
            { label: 'Received', set: 'text' },
            { label: 'Decision', set: 'text' },
            ...['Readings', 'Outside', 'Lowest', 'Mean', 'Highest', 'Not counted'].map((label) => ({
              label,
            })),
          ],
          rows: rows.map((row) => numbersOfRow(row, limits, unit)),
        }}
      />
    </figure>
  )
}

/** What the shapes mean; only of those that are there. */
function Legend({ rows, limits }: { rows: readonly StripRow[]; limits: ReadingLimits }) {
  const outside = rows.some(({ counted, setAside }) =>
    [...counted, ...setAside].some((one) => isOutside(one, limits)),
  )
  const setAside = rows.some((row) => row.setAside.length > 0)
  return (
    <p className="drawing-note">
      A dot is a reading{outside && ', a cross one outside the limit'}
      {setAside && ', a hollow dot one of a test that does not count'}.
    </p>
  )
}

/** "Lot B-07, accepted: 20 readings, 1.1 s to 1.9 s, mean 1.4 s; 0 outside the limit" */
function rowInWords({ name, counted, setAside }: StripRow, limits: ReadingLimits, unit: Unit): string {
  const found = readingsSummary(counted, limits)
  const beside = setAside.length > 0 ? `; ${setAside.length} of tests that do not count` : ''
  if (!found) return `${name}: no reading that counts${beside}`
  const [lowest, highest, mean] = [found.lowest, found.highest, found.mean].map((one) =>
    formatQuantity(one, unit),
  )
  return `${name}: ${found.count} readings, ${lowest} to ${highest}, mean ${mean}; ${found.outside} outside the limit${beside}`
}

function numbersOfRow(row: StripRow, limits: ReadingLimits, unit: Unit): string[] {
  const found = readingsSummary(row.counted, limits)
  const said = (value: number | undefined) => (value === undefined ? '–' : formatQuantity(value, unit))
  return [
    row.name,
    row.receivedOn,
    row.decision,
    formatNumber(row.counted.length),
    formatNumber(found?.outside ?? 0),
    ...[said(found?.lowest), said(found?.mean), said(found?.highest)],
    row.setAside.length > 0 ? formatNumber(row.setAside.length) : '–',
  ]
}
