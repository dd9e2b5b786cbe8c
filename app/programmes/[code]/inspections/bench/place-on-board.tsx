'use client'
import type { MouseEvent } from 'react'
import { useWorks } from '@/app/forms/works'
import type { BoardOutline } from '@/shared/inspection/board-outline'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import type { DefectTyped } from './defect-typed'

interface PlaceOnBoardProps {
  outline: BoardOutline | undefined
  components: readonly { component: string; xMm: number; yMm: number }[]
  defects: readonly DefectTyped[]
  /** Which defect a click places. */
  active: number
  onPlace: (xMm: string, yMm: string) => void
}

const MARGIN_MM = 4

/** The board’s plan, soldered side, to click on; the same as typing the millimetres. */
export function PlaceOnBoard({ outline, components, defects, active, onPlace }: PlaceOnBoardProps) {
  const { notation } = useWorks()
  if (!outline)
    return (
      <p className="field-hint bench-plan">
        Once the board’s length and width are specified, a plan to click on stands here.
      </p>
    )
  const { lengthMm, widthMm } = outline
  const place = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM()
    if (!matrix) return
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse())
    const within = (mm: number, max: number) =>
      decimalText(Math.round(Math.min(max, Math.max(0, mm)) * 2) / 2, notation.decimal)
    onPlace(within(at.x, lengthMm), within(widthMm - at.y, widthMm))
  }
  const size = Math.max(lengthMm, widthMm) / 40
  return (
    <figure className="bench-plan">
      <figcaption>Click where defect {active + 1} lies, or type its millimetres</figcaption>
      <svg
        viewBox={`${-MARGIN_MM} ${-MARGIN_MM - 2 * size} ${lengthMm + 2 * MARGIN_MM} ${widthMm + 2 * MARGIN_MM + 2 * size}`}
        role="img"
        aria-label={`The board’s plan, ${lengthMm} by ${widthMm} mm, travelling to the right`}
        onClick={place}
      >
        <path
          className="fill-mask-wash"
          stroke="var(--color-ink)"
          strokeWidth={size / 6}
          d={`M0 0H${lengthMm}V${widthMm}H0Z`}
        />
        {components.map(({ component, xMm, yMm }) => (
          <text key={component} x={xMm} y={widthMm - yMm} textAnchor="middle" fontSize={size * 1.3}>
            {component}
          </text>
        ))}
        <path
          className="fill-ink"
          d={`M${lengthMm / 2 - 3 * size} ${-1.6 * size}h${4 * size}v${-0.6 * size}l${1.8 * size} ${0.8 * size}l${-1.8 * size} ${0.8 * size}v${-0.6 * size}h${-4 * size}Z`}
        />
        <text x={lengthMm / 2 + 3.4 * size} y={-1 * size} fontSize={size * 1.4}>
          travel
        </text>
        {defects.map(({ xMm, yMm }, at) => {
          const [x, y] = [xMm, yMm].map((mm) => decimalTyped(mm, notation.decimal) ?? NaN) as [number, number]
          if (xMm === '' || yMm === '' || Number.isNaN(x + y)) return null
          return (
            <g key={at} className={at === active ? 'ink-carmine' : 'ink-copper'}>
              <circle className="outlined" strokeWidth={size / 4} cx={x} cy={widthMm - y} r={size} />
              <text x={x + 1.4 * size} y={widthMm - y + size / 2} fontSize={size * 1.6} fill="currentColor">
                {at + 1}
              </text>
            </g>
          )
        })}
      </svg>
    </figure>
  )
}
