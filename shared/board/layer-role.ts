import type { LengthUnit } from './placement/length-unit'

/** What a file of a board is: a copper layer counts from the top, 1, to the bottom. */
export type LayerRole =
  | { readonly kind: 'copper'; readonly side: 'top' | 'bottom' }
  | { readonly kind: 'copper'; readonly side: 'inner'; readonly layer: number }
  | { readonly kind: 'mask' | 'paste' | 'legend'; readonly side: 'top' | 'bottom' }
  | { readonly kind: 'outline' }
  | { readonly kind: 'drill'; readonly plated: boolean | undefined }
  | { readonly kind: 'netlist' }
  | PlacementRole
  | { readonly kind: 'parts list' }
  | { readonly kind: 'other' }

/** Component centres, with what a person says of them where the file does not. */
export interface PlacementRole {
  readonly kind: 'placement'
  readonly side: 'top' | 'bottom' | undefined
  readonly unit: LengthUnit | undefined
  /** Whether they are moved onto the board as they fit there. */
  readonly moved: boolean
}

/** A role, and whether the file itself says it or only its name suggests it. */
export interface ProposedRole {
  readonly role: LayerRole
  readonly by: 'attribute' | 'name' | 'content' | 'fit' | 'nothing'
}

type Side = 'top' | 'bottom'
const sideOf = (field: string | undefined): Side => (field === 'Bot' ? 'bottom' : 'top')

/** What `.FileFunction` says (Gerber Layer Format Specification 5.6.3). */
export function roleByAttribute(fields: readonly string[] | undefined): LayerRole | undefined {
  const [what, second, third] = fields ?? []
  switch (what) {
    case 'Copper':
      return third === 'Inr'
        ? { kind: 'copper', side: 'inner', layer: Number(second?.slice(1)) }
        : { kind: 'copper', side: sideOf(third) }
    case 'Soldermask':
      return { kind: 'mask', side: sideOf(second) }
    case 'Paste':
      return { kind: 'paste', side: sideOf(second) }
    case 'Legend':
      return { kind: 'legend', side: sideOf(second) }
    case 'Profile':
      return { kind: 'outline' }
    case 'Plated':
    case 'NonPlated':
      return { kind: 'drill', plated: what === 'Plated' }
    case 'MixedPlating':
      return { kind: 'drill', plated: undefined }
    case undefined:
      return undefined
    default:
      return { kind: 'other' }
  }
}

/** Endings and words of names as the programs that write such files use them. */
const NAMES: readonly (readonly [RegExp, LayerRole])[] = [
  [/(^|[._ -])(NPTH|non.?plated|unplated)/i, { kind: 'drill', plated: false }],
  [/(^|[._ -])PTH[._ -]|(^|[._ -])plated/i, { kind: 'drill', plated: true }],
  [/\.(drl|drd|xln|exc|ncd|drill)$/i, { kind: 'drill', plated: undefined }],
  [/\.(ipc|d356a?|356a?)$/i, { kind: 'netlist' }],
  [/\.(gtl|cmp|top)$/i, { kind: 'copper', side: 'top' }],
  [/\.(gbl|sol|bot)$/i, { kind: 'copper', side: 'bottom' }],
  [/\.(gts|stc|stoptop|smt)$/i, { kind: 'mask', side: 'top' }],
  [/\.(gbs|sts|stopbot|smb)$/i, { kind: 'mask', side: 'bottom' }],
  [/\.(gtp|crc|pastetop|spt)$/i, { kind: 'paste', side: 'top' }],
  [/\.(gbp|crs|pastebot|spb)$/i, { kind: 'paste', side: 'bottom' }],
  [/\.(gto|plc|positop|sst)$/i, { kind: 'legend', side: 'top' }],
  [/\.(gbo|pls|posibot|ssb)$/i, { kind: 'legend', side: 'bottom' }],
  [/\.(gko|gm1|outline|dim|oln)$/i, { kind: 'outline' }],
  [/(edge.?cuts|outline|profile|contour)/i, { kind: 'outline' }],
  [/(mask|stop).*(top|front)|(top|front|F)[_. -]*(solder)?mask/i, { kind: 'mask', side: 'top' }],
  [/(mask|stop).*(bot|back)|(bottom|back|B)[_. -]*(solder)?mask/i, { kind: 'mask', side: 'bottom' }],
  [/paste.*(top|front)|(top|front|F)[_. -]*(solder)?paste/i, { kind: 'paste', side: 'top' }],
  [/paste.*(bot|back)|(bottom|back|B)[_. -]*(solder)?paste/i, { kind: 'paste', side: 'bottom' }],
  [/(silk|legend).*(top|front)|(top|front|F)[_. -]*(silk|legend)/i, { kind: 'legend', side: 'top' }],
  [/(silk|legend).*(bot|back)|(bottom|back|B)[_. -]*(silk|legend)/i, { kind: 'legend', side: 'bottom' }],
  [/(copper|cu).*(top|front)|(top|front|F)[_. -]*(cu|copper)/i, { kind: 'copper', side: 'top' }],
  [/(copper|cu).*(bot|back)|(bottom|back|B)[_. -]*(cu|copper)/i, { kind: 'copper', side: 'bottom' }],
]

/** The side that the name of a file suggests, where all that it lists is on one. */
export function sideByName(fullName: string): Side | undefined {
  const name = fullName.slice(-NAME_LENGTH)
  const [top, bottom] = [
    /(^|[^a-z])(top|front)([^a-z]|$)/i.test(name),
    /(^|[^a-z])(bot|bottom|back)([^a-z]|$)/i.test(name),
  ]
  return top === bottom ? undefined : top ? 'top' : 'bottom'
}

/** No program writes longer names; patterns take their time over one that is. */
const NAME_LENGTH = 255
const INNER = /\.g(\d{1,2})l?$|(?:In|inner|L)[_. -]?(\d{1,2})[_. -]?(?:Cu|copper)/i

/** What a name suggests; a person confirms it. */
export function roleByName(fullName: string): LayerRole | undefined {
  const name = fullName.slice(-NAME_LENGTH)
  const inner = INNER.exec(name)
  if (inner) return { kind: 'copper', side: 'inner', layer: Number(inner[1] ?? inner[2]) }
  return NAMES.find(([pattern]) => pattern.test(name))?.[1]
}
