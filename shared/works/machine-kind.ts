/** Kinds of machines, baths and places of a line. */
export const MACHINE_KINDS = [
  { value: 'fluxer', label: 'Fluxer' },
  { value: 'preheater', label: 'Preheater' },
  { value: 'wave', label: 'Wave soldering machine' },
  { value: 'selective', label: 'Selective soldering machine' },
  { value: 'dip', label: 'Dip soldering bath' },
  { value: 'reflow', label: 'Reflow oven' },
  { value: 'bench', label: 'Hand soldering bench' },
  { value: 'cleaner', label: 'Cleaning plant' },
  { value: 'store', label: 'Store' },
  { value: 'other', label: 'Another' },
] as const
export type MachineKind = (typeof MACHINE_KINDS)[number]['value']

export const MACHINE_KIND_KEYS = MACHINE_KINDS.map(({ value }) => value)

export const machineKindName = (kind: string): string =>
  MACHINE_KINDS.find(({ value }) => value === kind)?.label ?? kind
