import { scaleLinear, scalePoint } from 'd3-scale'
import { formatNumber } from '@/shared/quantity/format'
import { mean } from '@/shared/statistics/sample-moments'
import { Drawing } from './drawing'
import { LevelLimit } from './limit-line'
import { pointShape, shapeFor } from './point-shape'
import { numberTicks } from './ticks'

interface GaugeStudyPictureProps {
  title: string
  parts: readonly string[]
  appraisers: readonly string[]
  /** `readings[part][appraiser][trial]`. */
  readings: readonly (readonly (readonly number[])[])[]
  /** Of every part's trials, person by person, and the greatest that chance explains. */
  ranges: readonly (readonly number[])[]
  upperRange: number
}

const WIDTH = 980
const LEFT = 52
const RIGHT = WIDTH - 20
const READINGS = { top: 28, bottom: 208 }
const RANGES = { top: 250, bottom: 320 }
const LEGEND = 366
const DASHES = [undefined, '7 3', '2.5 2.5', '9 2.5 2 2.5']

/** Every reading of a gauge study above its part, person beside person; beneath, how far each person's trials differ. */
export function GaugeStudyPicture(props: GaugeStudyPictureProps) {
  const { title, parts, appraisers, readings, ranges, upperRange } = props
  const all = readings.flat(2)
  const column = scalePoint<number>(
    parts.map((_, at) => at),
    [LEFT, RIGHT],
  ).padding(0.6)
  const apart = Math.min(18, (column.step() * 0.7) / appraisers.length)
  const across = (part: number, appraiser: number) =>
    column(part)! + (appraiser - (appraisers.length - 1) / 2) * apart
  const y = scaleLinear([Math.min(...all), Math.max(...all)], [READINGS.bottom, READINGS.top]).nice(6)
  const range = scaleLinear(
    [0, Math.max(upperRange, ...ranges.flat()) * 1.1],
    [RANGES.bottom, RANGES.top],
  ).nice(3)
  const beyond = ranges.flat().filter((one) => one > upperRange).length
  return (
    <Drawing
      title={title}
      description={`${parts.length} parts measured by ${appraisers.length} people. Above, the readings; below, the range of each person’s trials: ${beyond} beyond the limit of ${formatNumber(upperRange, 3)}.`}
      width={WIDTH}
      height={378}
      size="wide"
      numbers={numbersOf(props)}
    >
      <Panel {...READINGS} name="Reading" ticks={numberTicks(y, 6)} />
      <Panel {...RANGES} name="Range of the trials" ticks={numberTicks(range, 3)} />
      {parts.map((part, at) => (
        <text key={part} x={column(at)} y={RANGES.bottom + 16} textAnchor="middle" className="text-small">
          {part}
        </text>
      ))}
      {appraisers.map((appraiser, who) => (
        <g key={appraiser}>
          <path
            className="line-thin ink-copper"
            strokeDasharray={DASHES[who % DASHES.length]}
            d={readings
              .map((own, at) => `${at ? 'L' : 'M'}${across(at, who)} ${y(mean(own[who]!))}`)
              .join('')}
          />
          <path
            className="outlined-filled ink-copper"
            strokeWidth="1.2"
            d={readings
              .flatMap((own, at) =>
                own[who]!.map((one) => pointShape(shapeFor(who), across(at, who), y(one), 3.4)),
              )
              .join('')}
          />
          <path
            className="line-heavy"
            d={ranges.map((own, at) => `M${across(at, who)} ${RANGES.bottom}V${range(own[who]!)}`).join('')}
          />
          <path
            className="outlined-filled ink-copper"
            strokeWidth="1.2"
            d={ranges
              .map((own, at) => pointShape(shapeFor(who), across(at, who), range(own[who]!), 3.4))
              .join('')}
          />
          <g transform={`translate(${LEFT + 180 * who} ${LEGEND})`}>
            <path
              className="outlined-filled ink-copper"
              strokeWidth="1.4"
              d={pointShape(shapeFor(who), 5, -4, 4.5)}
            />
            <text x={16}>{appraiser}</text>
          </g>
        </g>
      ))}
      <LevelLimit y={range(upperRange)} left={LEFT} right={RIGHT} beyond="above" />
      <text x={RIGHT} y={RANGES.top - 13} textAnchor="end">
        {`above ${formatNumber(upperRange, 3)} it is no chance`}
      </text>
    </Drawing>
  )
}

type PanelProps = {
  top: number
  bottom: number
  name: string
  ticks: readonly { at: number; text: string }[]
}

function Panel({ top, bottom, name, ticks }: PanelProps) {
  return (
    <g>
      <path className="line-grid" d={ticks.map(({ at }) => `M${LEFT} ${at}H${RIGHT}`).join('')} />
      <path className="line-thin" d={`M${LEFT} ${top}V${bottom}H${RIGHT}`} />
      {ticks.map(({ at, text }) => (
        <text key={at} x={LEFT - 7} y={at + 4} textAnchor="end" className="text-soft text-small">
          {text}
        </text>
      ))}
      <text x={4} y={top - 13}>
        {name}
      </text>
    </g>
  )
}

function numbersOf({ parts, appraisers, readings, ranges }: GaugeStudyPictureProps) {
  return {
    columns: [
      { label: 'Part' },
      { label: 'Measured by', set: 'text' as const },
      { label: 'Readings', set: 'text' as const },
      { label: 'Mean' },
      { label: 'Range' },
    ],
    rows: parts.flatMap((part, at) =>
      appraisers.map((appraiser, who) => [
        part,
        appraiser,
        readings[at]![who]!.map((one) => formatNumber(one)).join('; '),
        formatNumber(mean(readings[at]![who]!)),
        formatNumber(ranges[at]![who]!),
      ]),
    ),
  }
}
