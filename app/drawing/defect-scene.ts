import type { DefectKind } from '@/shared/records/inspection'
import { WETTED_DEG, type FilletAsked } from './defect-fillet'

/** What one picture of the guide shows: the joint’s solder by volume and angle, and what else is to be seen. */
export interface DefectScene {
  readonly fillet: FilletAsked
  /** How far up from the component side the barrel is open, as a share of the board. */
  readonly unfilled?: number
  /** What is drawn beside the fillet. */
  readonly also?:
    | 'neighbour bridged'
    | 'neighbour and ball'
    | 'point'
    | 'blowhole'
    | 'void'
    | 'crack'
    | 'lifted land'
    | 'drops on the land'
    | 'bare land'
  /** What the line points at: so far along the surface from the lead (0) to its foot (1), or a place in mm from the lead’s axis and above the land. */
  readonly mark: { readonly message: string; readonly at: number | readonly [number, number] }
}

const WETTED: FilletAsked = { shareOfSound: 1, leadAngleDeg: WETTED_DEG }

/** A sound joint to compare with. */
export const SOUND_SCENE: DefectScene = {
  fillet: WETTED,
  mark: { message: 'small angle, outline of the lead seen', at: 0.25 },
}

export const DEFECT_SCENES: Readonly<Record<DefectKind, DefectScene>> = {
  'non-wetting': {
    fillet: { shareOfSound: 0.8, leadAngleDeg: 125 },
    unfilled: 0.75,
    mark: { message: 'more than 90° at the lead', at: 0.04 },
  },
  dewetting: {
    fillet: { shareOfSound: 0.1, leadAngleDeg: 20 },
    also: 'drops on the land',
    mark: { message: 'drops, and a thin film', at: [0.8, 0.1] },
  },
  'insufficient solder': {
    fillet: { shareOfSound: 0.2, leadAngleDeg: 15 },
    also: 'bare land',
    mark: { message: 'stops short of the edge', at: 1 },
  },
  'hole not filled': {
    fillet: WETTED,
    unfilled: 0.5,
    mark: { message: 'hollow, seen from below', at: [0.39, -0.62] },
  },
  'excess solder': {
    fillet: { shareOfSound: 5, leadAngleDeg: 72 },
    mark: { message: 'bulges over the land', at: 0.7 },
  },
  bridge: {
    fillet: WETTED,
    also: 'neighbour bridged',
    mark: { message: 'solder from net to net', at: [1.15, 0.42] },
  },
  icicle: {
    fillet: WETTED,
    also: 'point',
    mark: { message: 'drawn to a point', at: [0.06, 1.62] },
  },
  'solder ball': {
    fillet: WETTED,
    also: 'neighbour and ball',
    mark: { message: 'a bead on the mask', at: [1.2, 0.17] },
  },
  blowhole: {
    fillet: { shareOfSound: 1.1, leadAngleDeg: 20 },
    also: 'blowhole',
    mark: { message: 'opens outward', at: 0.5 },
  },
  void: {
    fillet: WETTED,
    also: 'void',
    mark: { message: 'closed cavity', at: [0.39, -0.5] },
  },
  'cold joint': {
    fillet: { shareOfSound: 1.4, leadAngleDeg: 75, ripples: { depthMm: 0.045, count: 3 } },
    mark: { message: 'lumpy, steep at the lead', at: 0.3 },
  },
  'disturbed joint': {
    fillet: { shareOfSound: 1.1, leadAngleDeg: 25, ripples: { depthMm: 0.02, count: 9 } },
    mark: { message: 'ripples, frozen in', at: 0.4 },
  },
  'fractured joint': {
    fillet: WETTED,
    also: 'crack',
    mark: { message: 'crack beside the lead', at: [0.36, 0.3] },
  },
  'lifted land': {
    fillet: WETTED,
    also: 'lifted land',
    mark: { message: 'land off the laminate', at: [0.95, 0.06] },
  },
}
