import { requireCount, requirePositive } from '@/shared/statistics/argument-checks'

/**
 * Cost of the nth unit when each doubling of the number made brings the cost to
 * `shareAtDoubling` of what it was (0.8 for the 80 % curve).
 * Source: T. P. Wright, Journal of the Aeronautical Sciences 3 (1936) 122 (from memory).
 */
export function costOfUnit(firstCost: number, unit: number, shareAtDoubling: number): number {
  requirePositive(firstCost, 'cost of the first unit')
  requireCount(unit, 'number of the unit', 1)
  if (!(shareAtDoubling > 0 && shareAtDoubling <= 1))
    throw new RangeError(`The share at each doubling lies above 0, at most 1; it is ${shareAtDoubling}.`)
  return firstCost * unit ** Math.log2(shareAtDoubling)
}
