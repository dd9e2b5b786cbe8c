import type { LayerRole } from './layer-role'

/** Roles as they are stored and chosen: a word for each, inner copper with its number from the top. */
const NAMED: Readonly<Record<string, { role: LayerRole; label: string }>> = {
  'copper-top': { role: { kind: 'copper', side: 'top' }, label: 'Copper, top' },
  'copper-bottom': { role: { kind: 'copper', side: 'bottom' }, label: 'Copper, bottom' },
  'mask-top': { role: { kind: 'mask', side: 'top' }, label: 'Solder mask, top' },
  'mask-bottom': { role: { kind: 'mask', side: 'bottom' }, label: 'Solder mask, bottom' },
  'paste-top': { role: { kind: 'paste', side: 'top' }, label: 'Paste, top' },
  'paste-bottom': { role: { kind: 'paste', side: 'bottom' }, label: 'Paste, bottom' },
  'legend-top': { role: { kind: 'legend', side: 'top' }, label: 'Legend, top' },
  'legend-bottom': { role: { kind: 'legend', side: 'bottom' }, label: 'Legend, bottom' },
  outline: { role: { kind: 'outline' }, label: 'Outline of the board' },
  'drill-plated': { role: { kind: 'drill', plated: true }, label: 'Drill file, plated holes' },
  'drill-unplated': { role: { kind: 'drill', plated: false }, label: 'Drill file, unplated holes' },
  drill: { role: { kind: 'drill', plated: undefined }, label: 'Drill file, plating not said' },
  netlist: { role: { kind: 'netlist' }, label: 'Netlist' },
  other: { role: { kind: 'other' }, label: 'Not read for the board' },
}
const INNER = /^copper-inner-([1-9]\d?)$/
/** Boards have seldom more copper layers than this. */
const INNER_LAYERS_MAX = 30

/** The role of a stored word; undefined where it is none. */
export function roleFrom(code: string): LayerRole | undefined {
  const layer = Number(INNER.exec(code)?.[1])
  if (layer <= INNER_LAYERS_MAX) return { kind: 'copper', side: 'inner', layer }
  return Object.hasOwn(NAMED, code) ? NAMED[code]!.role : undefined
}

export function codeOfRole(role: LayerRole): string {
  if (role.kind === 'copper' && role.side === 'inner') return `copper-inner-${role.layer}`
  if (role.kind === 'drill')
    return role.plated === undefined ? 'drill' : role.plated ? 'drill-plated' : 'drill-unplated'
  const code = 'side' in role ? `${role.kind}-${role.side}` : role.kind
  return Object.hasOwn(NAMED, code) ? code : 'other'
}

export const roleLabel = (role: LayerRole): string =>
  role.kind === 'copper' && role.side === 'inner'
    ? `Copper, inner layer ${role.layer}`
    : NAMED[codeOfRole(role)]!.label

/** What a person can choose for a file: drill files only for holes, netlists only for nets, all else for what is drawn. */
export const roleChoices = (
  format: 'gerber' | 'drill' | 'netlist',
  innerLayers: number,
): { value: string; text: string }[] => {
  const inner = Array.from({ length: innerLayers }, (_, index): LayerRole => ({
    kind: 'copper',
    side: 'inner',
    layer: index + 2,
  }))
  const named = Object.values(NAMED).map(({ role }) => role)
  return [...named, ...inner]
    .filter(({ kind }) => kind === 'other' || formatOf(kind) === format)
    .map((role) => ({ value: codeOfRole(role), text: roleLabel(role) }))
}

const formatOf = (kind: LayerRole['kind']): 'gerber' | 'drill' | 'netlist' =>
  kind === 'drill' || kind === 'netlist' ? kind : 'gerber'
