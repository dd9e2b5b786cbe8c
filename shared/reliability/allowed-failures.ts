import type { RecordOf } from '@/shared/records/record-kinds'
import type { ProgrammeTarget } from './programme-target'

/**
 * Joint failures that the target allows in life tests: those of a board's life,
 * for as many board lives as the joint-cycles of service come to. Undefined
 * while the cycles of a life are not specified.
 */
export function allowedInTests(
  specimens: readonly Pick<RecordOf<'life-test'>, 'joints' | 'cycles' | 'acceleration'>[],
  { allowedFailures, joints, lifeCycles }: ProgrammeTarget,
): number | undefined {
  if (lifeCycles === undefined) return undefined
  const ran = specimens.reduce((sum, row) => sum + row.joints * row.cycles * row.acceleration, 0)
  return (ran / (joints * lifeCycles)) * allowedFailures
}

/** Joint failures that the target allows in so many hours of boards in service. */
export const allowedInService = (boardHours: number, { boardFit }: Pick<ProgrammeTarget, 'boardFit'>) =>
  boardHours * boardFit * 1e-9
