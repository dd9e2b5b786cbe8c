/** Sizes of a joint in the drawing's units, around its axis. */
export interface JointOutline {
  axis: number
  /** Half widths. */
  land: number
  hole: number
  lead: number
  /** Radius of the fillet's arc; not finite when it is straight. */
  radius: number
  concave: boolean
  /** Height of the fillet. */
  rise: number
}

/** From one point to the next along the fillet's surface. */
const surface = ({ radius, concave }: JointOutline, x: number, y: number, towards: 'up' | 'down'): string => {
  if (!Number.isFinite(radius)) return `L${x} ${y}`
  const sweep = concave === (towards === 'up') ? 1 : 0
  return `A${radius} ${radius} 0 0 ${sweep} ${x} ${y}`
}

/** One fillet: its area, and the surface that air meets. */
interface FilletPaths {
  area: string
  surface: string
}

/** A fillet on the land whose face lies at `face`: standing up from it, or hanging down. */
export function filletPaths(outline: JointOutline, face: number, towards: 'up' | 'down'): FilletPaths {
  const { axis, land, lead, rise } = outline
  const tip = towards === 'up' ? face - rise : face + rise
  const right = `M${axis + land} ${face}${surface(outline, axis + lead, tip, towards)}`
  const left = surface(outline, axis - land, face, towards)
  return {
    area: `${right}H${axis - lead}${left}Z`,
    // Straight over the lead's end: seen only where the solder hides it.
    surface: `${right}H${axis - lead}${left}`,
  }
}

/** The wall and both lands of a plated hole on one side of the axis; without a wall when it is not plated. */
export function landAndBarrel(
  { axis, land, hole }: Pick<JointOutline, 'axis' | 'land' | 'hole'>,
  side: 1 | -1,
  { top, bottom, copper, plated }: { top: number; bottom: number; copper: number; plated: boolean },
): string {
  const at = (reach: number) => axis + side * reach
  if (!plated) return `M${at(hole)} ${bottom}H${at(land)}v${copper}H${at(hole)}Z`
  return `M${at(hole)} ${top - copper}H${at(land)}v${copper}H${at(hole + copper)}V${bottom}H${at(land)}v${copper}H${at(hole)}Z`
}
