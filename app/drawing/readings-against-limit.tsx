import { scaleLinear } from 'd3-scale'
import { isOutside } from '@/shared/lot-tests/readings-summary'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { dotStacks } from './dot-stacks'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { UprightLimit } from './limit-line'
import { pointShape } from './point-shape'
import { axisTitle, numberTicks } from './ticks'

type ReadingsAgainstLimitProps = {
  title: string
  /** What was read, such as "Plating thickness". */
  characteristic: string
  unit: Unit
  readings: readonly number[]
  limits: { atLeast?: number; atMost?: number }
  /** The tolerance bound the readings prove, with its name, such as "95 % of pieces, 95 % confident". */
  bound?: { value: number; name: string }
}

const WIDTH = 440
const DOT = 9

/** Every reading of a lot as a dot against its limits; a cross where it is outside. */
export function ReadingsAgainstLimit(props: ReadingsAgainstLimitProps) {
  const { title, characteristic, unit, readings, limits, bound } = props
  const marks = [...readings, limits.atLeast, limits.atMost, bound?.value].filter((one) => one !== undefined)
  const x = scaleLinear([Math.min(...marks), Math.max(...marks)], [34, WIDTH - 30]).nice(6)
  const dots = dotStacks(readings, x, DOT)
  const tallest = Math.max(1, ...dots.map(({ level }) => level + 1))
  const step = Math.min(DOT, 170 / tallest)
  const height = 96 + Math.max(70, tallest * step)
  const frame = frameOf(WIDTH, height, { left: 20, right: 16, top: 44 })
  const { outside, numbers } = summarise(props)
  const placed = dots.map((dot) => ({ ...dot, y: frame.bottom - 6 - dot.level * step }))
  return (
    <Drawing
      title={title}
      description={`${readings.length} readings of ${characteristic.toLowerCase()}; ${outside} outside the limit.`}
      width={WIDTH}
      height={height}
      numbers={numbers}
    >
      <Axes
        frame={frame}
        across={{ title: axisTitle(characteristic, printedUnit(unit)), ticks: numberTicks(x, 6) }}
      />
      <path
        className="ink-copper fill-current"
        d={placed
          .filter(({ value }) => !isOutside(value, limits))
          .map(({ at, y }) => pointShape('ring', at, y, step * 0.4))
          .join('')}
      />
      <path
        className="ink-carmine outlined"
        strokeWidth="2"
        d={placed
          .filter(({ value }) => isOutside(value, limits))
          .map(({ at, y }) => pointShape('cross', at, y, step * 0.4))
          .join('')}
      />
      {limits.atLeast !== undefined && (
        <LimitWithText
          x={x(limits.atLeast)}
          frame={frame}
          beyond="left"
          text={`at least ${formatQuantity(limits.atLeast, unit)}`}
        />
      )}
      {limits.atMost !== undefined && (
        <LimitWithText
          x={x(limits.atMost)}
          frame={frame}
          beyond="right"
          text={`at most ${formatQuantity(limits.atMost, unit)}`}
        />
      )}
      {bound && (
        <g>
          <path
            className="line-bound"
            strokeWidth="1.4"
            d={`M${x(bound.value)} ${frame.top - 8}V${frame.bottom}`}
          />
          <path className="fill-ink" d={`M${x(bound.value)} ${frame.top}l-5 -9h10Z`} />
          <text
            x={x(bound.value)}
            y={frame.top - 28}
            textAnchor={x(bound.value) > WIDTH / 2 ? 'end' : 'start'}
            className="text-haloed"
          >
            {bound.name}: {formatQuantity(bound.value, unit)}
          </text>
        </g>
      )}
    </Drawing>
  )
}

type LimitWithTextProps = {
  x: number
  frame: { top: number; bottom: number }
  beyond: 'left' | 'right'
  text: string
}

function LimitWithText({ x, frame, beyond, text }: LimitWithTextProps) {
  return (
    <g>
      <UprightLimit x={x} top={frame.top - 4} bottom={frame.bottom} beyond={beyond} />
      <text
        x={x + (beyond === 'left' ? 2 : -2)}
        y={frame.top - 11}
        textAnchor={beyond === 'left' ? 'start' : 'end'}
        className="text-haloed"
      >
        {text}
      </text>
    </g>
  )
}

function summarise({ readings, limits, unit, bound }: ReadingsAgainstLimitProps) {
  const outside = readings.filter((value) => isOutside(value, limits)).length
  const mean = readings.reduce((sum, value) => sum + value, 0) / readings.length
  const said = (value: number | undefined) => (value === undefined ? '–' : formatQuantity(value, unit))
  const rows = [
    ['Readings', String(readings.length)],
    ['Outside the limit', String(outside)],
    ['Lowest', said(Math.min(...readings))],
    ['Mean', said(mean)],
    ['Highest', said(Math.max(...readings))],
    ['At least', said(limits.atLeast)],
    ['At most', said(limits.atMost)],
    ...(bound ? [[bound.name, said(bound.value)]] : []),
    [
      'All readings, rising',
      [...readings]
        .sort((a, b) => a - b)
        .map((value) => formatNumber(value))
        .join('; '),
    ],
  ]
  return {
    outside,
    numbers: { columns: [{ label: 'What' }, { label: 'Value', set: 'text' as const }], rows },
  }
}
