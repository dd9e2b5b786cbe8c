import { printedUnit } from '@/shared/quantity/unit'
import type { Column } from './column'
import { kindOf } from './column-kinds'

/** The unit to name beside a column's label; empty where there is none, or the label is the unit itself. */
export function unitToName(column: Column): string {
  const unit = kindOf(column).unit(column)
  const printed = unit === undefined ? '' : printedUnit(unit)
  return printed === column.label.toLowerCase() ? '' : printed
}

/** A column's label with its unit: "Hole, mm". */
export function columnHeading(column: Column): string {
  const unit = unitToName(column)
  return unit ? `${column.label}, ${unit}` : column.label
}
