import type { ProgrammeTarget } from './programme-target'

/** Joint failures that the target allows in so many hours of boards in service. */
export const allowedInService = (boardHours: number, { boardFit }: Pick<ProgrammeTarget, 'boardFit'>) =>
  boardHours * boardFit * 1e-9
