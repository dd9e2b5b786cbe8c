import type { Inspection } from './inspection'
import type { Instrument } from './instrument'
import type { Log } from './log'
import type { Lot } from './lot'
import type { ListedPart } from '@/shared/works/listed-part'

/** Everything recorded about a programme beside its specification. */
export interface ProgrammeRecords {
  readonly lots: readonly Lot[]
  /** Other lots that the works had of the same suppliers and parts: by them too the next one is inspected. */
  readonly deliveries: readonly Lot[]
  /** By characteristic key; within one, in the order the logs were opened. */
  readonly logs: ReadonlyMap<string, readonly Log[]>
  readonly inspections: readonly Inspection[]
  readonly instruments: readonly Instrument[]
  /** The parts of the works that its parts list names, by their number. */
  readonly parts: readonly ListedPart[]
  /** The typed records that need no page of their own, by kind, oldest first. */
  readonly byKind: ReadonlyMap<string, readonly { readonly id: string }[]>
}

export const NO_RECORDS: ProgrammeRecords = {
  lots: [],
  deliveries: [],
  logs: new Map(),
  inspections: [],
  instruments: [],
  parts: [],
  byKind: new Map(),
}
