/** The plotting rectangle inside a drawing, in its user units. */
export type Frame = { left: number; right: number; top: number; bottom: number }

/** Leaves room for a title above, tick labels at the left and below, and line labels at the right. */
export const frameOf = (width: number, height: number, room: Partial<Frame> = {}): Frame => ({
  left: room.left ?? 46,
  right: width - (room.right ?? 12),
  top: room.top ?? 30,
  bottom: height - (room.bottom ?? 40),
})
