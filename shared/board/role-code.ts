import type { LayerRole, PlacementRole } from './layer-role'
import { LENGTH_UNITS, type LengthUnit } from './placement/length-unit'

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
  'parts-list': { role: { kind: 'parts list' }, label: 'Parts list' },
  other: { role: { kind: 'other' }, label: 'Not read for the board' },
}
const PLACEMENT = /^placement(?:-(top|bottom))?(?:-(mm|inch|mil))?(-moved)?$/
const INNER = /^copper-inner-([1-9]\d?)$/
/** Boards have seldom more copper layers than this. */
const INNER_LAYERS_MAX = 30

/** The role of a stored word; undefined where it is none. */
export function roleFrom(code: string): LayerRole | undefined {
  const layer = Number(INNER.exec(code)?.[1])
  if (layer <= INNER_LAYERS_MAX) return { kind: 'copper', side: 'inner', layer }
  const placement = PLACEMENT.exec(code)
  if (placement) {
    const [, side, unit, moved] = placement
    return {
      kind: 'placement',
      side: side as PlacementRole['side'],
      unit: unit as LengthUnit | undefined,
      moved: moved !== undefined,
    }
  }
  return Object.hasOwn(NAMED, code) ? NAMED[code]!.role : undefined
}

export function codeOfRole(role: LayerRole): string {
  if (role.kind === 'copper' && role.side === 'inner') return `copper-inner-${role.layer}`
  if (role.kind === 'parts list') return 'parts-list'
  if (role.kind === 'placement')
    return ['placement', role.side, role.unit, role.moved ? 'moved' : undefined]
      .filter((part) => part !== undefined)
      .join('-')
  if (role.kind === 'drill')
    return role.plated === undefined ? 'drill' : role.plated ? 'drill-plated' : 'drill-unplated'
  const code = 'side' in role ? `${role.kind}-${role.side}` : role.kind
  return Object.hasOwn(NAMED, code) ? code : 'other'
}

export const roleLabel = (role: LayerRole): string =>
  role.kind === 'copper' && role.side === 'inner'
    ? `Copper, inner layer ${role.layer}`
    : role.kind === 'placement'
      ? placementLabel(role)
      : NAMED[codeOfRole(role)]!.label

const placementLabel = ({ side, unit, moved }: PlacementRole): string =>
  [
    'Placement of components',
    ...(side ? [side] : []),
    ...(unit ? [`in ${unit}`] : []),
    ...(moved ? ['moved onto the board'] : []),
  ].join(', ')

type Choices = { value: string; text: string }[]
const choicesOf = (roles: readonly LayerRole[]): Choices =>
  roles.map((role) => ({ value: codeOfRole(role), text: roleLabel(role) }))

/** What a placement file says of itself, which nobody has to choose, and whether it has to be moved to lie on the board. */
export interface PlacementSays {
  readonly sides: boolean
  readonly unit: boolean
  readonly wouldMove: boolean
}

/** What a person can choose for a placement file: side and unit where the file says none, and whether it is moved. */
export const placementChoices = ({ sides, unit, wouldMove }: PlacementSays): Choices =>
  choicesOf([
    ...(sides ? [undefined] : ([undefined, 'top', 'bottom'] as const)).flatMap((side) =>
      (unit ? [undefined] : [undefined, ...LENGTH_UNITS]).flatMap((length) =>
        (wouldMove ? [false, true] : [false]).map((moved): LayerRole => ({
          kind: 'placement',
          side,
          unit: length,
          moved,
        })),
      ),
    ),
    { kind: 'other' },
  ])

type ChosenFormat = 'gerber' | 'drill' | 'netlist' | 'parts list'

/** What a person can choose for any other file: drill files only for holes, netlists only for nets, all else for what is drawn. */
export const roleChoices = (format: ChosenFormat, innerLayers: number): Choices => {
  const inner = Array.from({ length: innerLayers }, (_, index): LayerRole => ({
    kind: 'copper',
    side: 'inner',
    layer: index + 2,
  }))
  const named = Object.values(NAMED).map(({ role }) => role)
  return choicesOf([...named, ...inner].filter(({ kind }) => kind === 'other' || formatOf(kind) === format))
}

const formatOf = (kind: LayerRole['kind']): ChosenFormat =>
  kind === 'drill' || kind === 'netlist' || kind === 'parts list' ? kind : 'gerber'
