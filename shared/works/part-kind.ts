import type { LotKind } from '@/shared/methods/lot-kind'

interface PartKindEntry {
  readonly label: string
  /** What a delivered batch of it is. */
  readonly lot: LotKind
  /** How it is soldered onto the board; undefined where it is not. */
  readonly joints?: 'through holes' | 'on the surface'
}

/** What a part of the works can be. */
export const PART_KINDS = {
  component: { label: 'Component with leads', lot: 'component', joints: 'through holes' },
  connector: { label: 'Connector', lot: 'component', joints: 'through holes' },
  'surface-mount': { label: 'Surface-mount component', lot: 'component', joints: 'on the surface' },
  'bare-board': { label: 'Bare board', lot: 'bare board' },
  laminate: { label: 'Laminate', lot: 'laminate' },
  solder: { label: 'Solder', lot: 'consumable' },
  flux: { label: 'Flux', lot: 'consumable' },
  other: { label: 'Another', lot: 'consumable' },
} as const satisfies Record<string, PartKindEntry>
export type PartKind = keyof typeof PART_KINDS

/** How parts of this kind are soldered onto the board. */
export const jointsOf = (kind: PartKind): PartKindEntry['joints'] => {
  const entry: PartKindEntry = PART_KINDS[kind]
  return entry.joints
}
