import type { Unit } from '@/shared/quantity/unit'
import type { Quantity } from './finding'

/** A number with its unit, for what a finding measured. */
export const measure = (value: number, unit: Unit): Quantity => ({ value, unit })

/** How many there are of what `unit` names; '1' where it is nothing with a unit of its own. */
export const count = (value: number, unit: Unit = '1'): Quantity => measure(value, unit)
