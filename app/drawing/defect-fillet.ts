import { meniscusOf, meniscusVolumeMm3, surfaceOf, type SectionPoint } from '@/shared/physics/solder-meniscus'

/** The joint that every picture of the guide starts from, mm: common sizes of a plated hole. */
export const GUIDE_JOINT = {
  landRadiusMm: 0.95,
  holeRadiusMm: 0.475,
  leadRadiusMm: 0.3,
  boardMm: 1.1,
  leadOutMm: 1.2,
  pitchMm: 2.54,
}

/** Between surface and metal where solder wets well: anything small will do. */
export const WETTED_DEG = 15
/** Equal angles at lead and land make a fillet as high as it is wide. */
const REACH_MM = GUIDE_JOINT.landRadiusMm - GUIDE_JOINT.leadRadiusMm

/** Solder of a fillet that wets well and just reaches the land’s edge, mm³. */
const SOUND_MM3 = meniscusVolumeMm3(
  {
    footRadiusMm: GUIDE_JOINT.landRadiusMm,
    heightMm: REACH_MM,
    leadAngleDeg: WETTED_DEG,
    landAngleDeg: WETTED_DEG,
    shape: 'concave',
  },
  GUIDE_JOINT.leadRadiusMm,
)

/** A fillet as the guide asks for it: so much of a sound joint’s solder, at such an angle to the lead. */
export interface FilletAsked {
  readonly shareOfSound: number
  readonly leadAngleDeg: number
  /** How far frozen lumps or ripples stand off the smooth arc, mm, and how many there are. */
  readonly ripples?: { readonly depthMm: number; readonly count: number }
}

/** The fillet of one side, from the lead to its foot on the land. */
export function defectFillet({ shareOfSound, leadAngleDeg, ripples }: FilletAsked) {
  const { leadRadiusMm, landRadiusMm } = GUIDE_JOINT
  const volumeMm3 = shareOfSound * SOUND_MM3
  const meniscus = meniscusOf({
    leadRadiusMm,
    landRadiusMm,
    leadAngleDeg,
    landAngleMinDeg: Math.min(leadAngleDeg, 20),
    volumeMm3,
  })
  const smooth = surfaceOf(meniscus, leadRadiusMm, ripples ? 48 : 24)
  return { meniscus, volumeMm3, surface: ripples ? smooth.map(rippled(smooth, ripples)) : smooth }
}

/** Moves points along the surface's normal, not at its ends. */
const rippled =
  (surface: readonly SectionPoint[], { depthMm, count }: NonNullable<FilletAsked['ripples']>) =>
  (point: SectionPoint, at: number): SectionPoint => {
    const [before, after] = [surface[at - 1], surface[at + 1]]
    if (!before || !after) return point
    const [along, up] = [after.radiusMm - before.radiusMm, after.heightMm - before.heightMm]
    const length = Math.hypot(along, up)
    const off = depthMm * Math.sin((2 * Math.PI * count * at) / (surface.length - 1))
    return {
      radiusMm: point.radiusMm - (off * up) / length,
      heightMm: point.heightMm + (off * along) / length,
    }
  }
