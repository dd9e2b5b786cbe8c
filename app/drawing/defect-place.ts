import type { SectionPoint } from '@/shared/physics/solder-meniscus'
import { GUIDE_JOINT } from './defect-fillet'

/* Where millimetres of a joint's section fall in the guide's pictures. */

export const WIDTH = 340
export const AXIS = WIDTH / 2
export const SCALE = 68
/** The laminate’s soldered side; lands stand on it. */
export const LAND_Y = 172
export const BOTTOM = LAND_Y + GUIDE_JOINT.boardMm * SCALE
export const HEIGHT = BOTTOM + 48

export const x = (mm: number): number => tenth(AXIS + mm * SCALE)
/** Heights count from the land’s surface. */
export const y = (mm: number): number => tenth(LAND_Y - 4 - mm * SCALE)

/** The surface on one side of an axis, from the lead to its foot. */
export const pathThrough = (surface: readonly SectionPoint[], axisMm: number, side: number): string =>
  `M${surface.map(({ radiusMm, heightMm }) => `${x(axisMm + side * radiusMm)} ${y(heightMm)}`).join('L')}`

const tenth = (value: number): number => Math.round(value * 10) / 10
