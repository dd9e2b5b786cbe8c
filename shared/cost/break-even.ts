import { requireNotNegative } from '@/shared/statistics/argument-checks'
import { requireFinite } from '@/shared/statistics/reading-checks'

/** Number of boards (not rounded) after which a fixed outlay is saved; Infinity when nothing is saved per board. */
export function breakEvenQuantity(outlay: number, savingPerBoard: number): number {
  requireNotNegative(outlay, 'outlay')
  requireFinite(savingPerBoard, 'saving per board')
  if (outlay === 0) return 0
  return savingPerBoard > 0 ? outlay / savingPerBoard : Infinity
}
