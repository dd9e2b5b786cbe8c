'use client'
import type { MouseEvent } from 'react'
import { useWorks } from '@/app/forms/works'
import { jointTouched, type BoardPlanRead, type PlanPlace } from '@/shared/board/plan-of-board'
import type { BoardOutline } from '@/shared/inspection/board-outline'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import type { DefectTyped } from './defect-typed'

interface PlaceOnBoardProps {
  outline: BoardOutline | undefined
  /** The board as its files have it, where they were read. */
  plan: BoardPlanRead | undefined
  components: readonly { component: string; xMm: number; yMm: number }[]
  defects: readonly DefectTyped[]
  /** Which defect a click places. */
  active: number
  /** The place, and the joint there where one is touched. */
  onPlace: (xMm: string, yMm: string, joint: string | undefined) => void
}

const MARGIN_MM = 4
/** Half of what a fingertip covers. */
const TOUCH_PIXELS = 22

/** The board’s plan, soldered side, to click on; the same as typing the millimetres. */
export function PlaceOnBoard({ outline, plan, components, defects, active, onPlace }: PlaceOnBoardProps) {
  const { notation } = useWorks()
  const size = plan ?? outline
  if (!size)
    return (
      <p className="field-hint bench-plan">
        Once the board’s files are confirmed, or its length and width are specified, a plan to click on stands
        here.
      </p>
    )
  const { lengthMm, widthMm } = size
  const place = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM()
    if (!matrix) return
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse())
    const within = (mm: number, max: number) =>
      decimalText(Math.round(Math.min(max, Math.max(0, mm)) * 2) / 2, notation.decimal)
    const touched =
      plan && jointTouched(plan.joints, { xMm: at.x, yMm: widthMm - at.y }, TOUCH_PIXELS / matrix.a)
    if (touched)
      onPlace(
        decimalText(touched.xMm, notation.decimal),
        decimalText(touched.yMm, notation.decimal),
        touched.name,
      )
    else onPlace(within(at.x, lengthMm), within(widthMm - at.y, widthMm), undefined)
  }
  const mark = Math.max(lengthMm, widthMm) / 40
  return (
    <figure className="bench-plan">
      <figcaption>
        {plan
          ? `Touch the joint of defect ${active + 1}, or find it below`
          : `Click where defect ${active + 1} lies, or type its millimetres`}
      </figcaption>
      <svg
        viewBox={`${-MARGIN_MM} ${-MARGIN_MM - 2 * mark} ${lengthMm + 2 * MARGIN_MM} ${widthMm + 2 * MARGIN_MM + 2 * mark}`}
        role="img"
        aria-label={`The board’s plan, ${lengthMm} by ${widthMm} mm, travelling to the right`}
        onClick={place}
      >
        <path
          className="fill-mask-wash"
          stroke="var(--color-ink)"
          strokeWidth={mark / 6}
          fillRule="evenodd"
          d={
            plan
              ? [plan.outlineMm, ...plan.cutoutsMm].map((ring) => ringPath(ring, widthMm)).join('')
              : `M0 0H${lengthMm}V${widthMm}H0Z`
          }
        />
        {plan && (
          <g className="bench-joints">
            {plan.joints.map(({ name, xMm, yMm, landMm }) => (
              <circle key={`${name} ${xMm} ${yMm}`} cx={xMm} cy={widthMm - yMm} r={landMm / 2}>
                {name !== '' && <title>{name}</title>}
              </circle>
            ))}
          </g>
        )}
        {components.map(({ component, xMm, yMm }) => (
          <text key={component} x={xMm} y={widthMm - yMm} textAnchor="middle" fontSize={mark * 1.3}>
            {component}
          </text>
        ))}
        <path
          className="fill-ink"
          d={`M${lengthMm / 2 - 3 * mark} ${-1.6 * mark}h${4 * mark}v${-0.6 * mark}l${1.8 * mark} ${0.8 * mark}l${-1.8 * mark} ${0.8 * mark}v${-0.6 * mark}h${-4 * mark}Z`}
        />
        <text x={lengthMm / 2 + 3.4 * mark} y={-1 * mark} fontSize={mark * 1.4}>
          travel
        </text>
        {defects.map(({ xMm, yMm }, at) => {
          const [x, y] = [xMm, yMm].map((mm) => decimalTyped(mm, notation.decimal) ?? NaN) as [number, number]
          if (xMm === '' || yMm === '' || Number.isNaN(x + y)) return null
          return (
            <g key={at} className={at === active ? 'ink-carmine' : 'ink-copper'}>
              <circle className="outlined" strokeWidth={mark / 4} cx={x} cy={widthMm - y} r={mark} />
              <text x={x + 1.4 * mark} y={widthMm - y + mark / 2} fontSize={mark * 1.6} fill="currentColor">
                {at + 1}
              </text>
            </g>
          )
        })}
      </svg>
    </figure>
  )
}

const ringPath = (ring: readonly PlanPlace[], widthMm: number): string =>
  `M${ring.map(({ xMm, yMm }) => `${xMm} ${widthMm - yMm}`).join('L')}Z`
