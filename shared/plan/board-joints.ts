import type { LeadHole } from './parameters/lead-holes'

export interface BoardJoints {
  readonly machine: number
  readonly hand: number
  readonly surfaceMount: number
  readonly total: number
}

/** The joints of one board, counted from its hole table; nobody types the sum a second time. */
export function boardJoints(
  holes: readonly Pick<LeadHole, 'joints' | 'soldered'>[],
  surfaceMount = 0,
): BoardJoints {
  let machine = 0
  let hand = 0
  for (const { joints, soldered } of holes) {
    if (soldered === 'machine') machine += joints
    else hand += joints
  }
  return { machine, hand, surfaceMount, total: machine + hand + surfaceMount }
}
