import type { FindGroup } from './find-groups'

/** Something that can be looked for. `Where` says where it is shown: a place, or an address. */
export interface Findable<Where> {
  readonly group: FindGroup
  /** As people read it. */
  readonly label: string
  /** What people type for it beside its label: its key, its number, its reference. */
  readonly also: readonly string[]
  /** What tells it from others of the same name. */
  readonly detail?: string
  /** The code of the programme that it lies in, if in one. */
  readonly programme?: string
  readonly where: Where
}
