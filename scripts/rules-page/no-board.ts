import { boardOf } from '@/shared/board/board'

/** A board of which nothing was read: rules judged on boards are asked of it what they read. */
export const NO_BOARD = boardOf({
  top: undefined,
  bottom: undefined,
  inner: [],
  masks: [],
  outline: undefined,
  holes: [],
  netlist: undefined,
  placements: [],
  listed: undefined,
})
