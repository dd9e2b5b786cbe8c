import type { Inspection } from '@/shared/records/inspection'

/** The size of the board as far as anything recorded tells it. */
export interface BoardOutline {
  readonly lengthMm: number
  readonly widthMm: number
  /** Whose word the size is. */
  readonly from: 'specification' | 'cleanliness test' | 'defects placed'
}

interface SizeKnown {
  readonly lengthMm?: number | undefined
  readonly widthMm?: number | undefined
}

/** Beyond the outermost defect, when nothing else tells the size. */
const BORDER_MM = 10

/**
 * The board’s outline: as specified; else as its cleanliness test measured it;
 * else just large enough for the defects placed on it. Undefined when nothing tells.
 */
export function boardOutline(
  specified: SizeKnown,
  tests: readonly SizeKnown[],
  inspections: readonly Pick<Inspection, 'defects'>[],
): BoardOutline | undefined {
  if (specified.lengthMm !== undefined && specified.widthMm !== undefined)
    return { lengthMm: specified.lengthMm, widthMm: specified.widthMm, from: 'specification' }
  const test = tests.at(-1)
  if (test?.lengthMm !== undefined && test.widthMm !== undefined)
    return { lengthMm: test.lengthMm, widthMm: test.widthMm, from: 'cleanliness test' }
  const placed = inspections.flatMap(({ defects }) =>
    defects.flatMap(({ xMm, yMm }) => (xMm === undefined || yMm === undefined ? [] : [{ xMm, yMm }])),
  )
  if (placed.length === 0) return undefined
  return {
    lengthMm: Math.max(...placed.map(({ xMm }) => xMm)) + BORDER_MM,
    widthMm: Math.max(...placed.map(({ yMm }) => yMm)) + BORDER_MM,
    from: 'defects placed',
  }
}
