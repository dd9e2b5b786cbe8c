import { formatNumber } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'

type QuantityProps = {
  /** A number, or one already printed elsewhere. */
  value: number | string
  unit: Unit
  /** Significant figures; ignored for a value already printed. */
  figures?: number
}

/** A number with its unit in small type; never broken over a line. */
export function Quantity({ value, unit, figures }: QuantityProps) {
  const printed = printedUnit(unit)
  return (
    <span className="quantity">
      {typeof value === 'number' ? formatNumber(value, figures) : value}
      {printed && (
        <>
          {' '}
          <span className="quantity-unit">{printed}</span>
        </>
      )}
    </span>
  )
}
