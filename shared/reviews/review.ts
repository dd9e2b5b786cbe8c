import type { Subject } from './subject'

/** Somebody who was there: a member by their id, or a guest with what they came for. */
export type Present =
  | { readonly kind: 'member'; readonly personId: string; readonly name: string }
  | { readonly kind: 'guest'; readonly name: string; readonly from: string }

/** What a line of minutes is. A point is put on the agenda by the people themselves. */
export const LINE_KINDS = ['point', 'note', 'decision', 'action'] as const
export type LineKind = (typeof LINE_KINDS)[number]
export const LINE_NAMES: Readonly<Record<LineKind, string>> = {
  point: 'Point',
  note: 'Note',
  decision: 'Decision',
  action: 'Action',
}

export interface MinuteLine {
  readonly number: number
  readonly kind: LineKind
  readonly about: Subject | null
  readonly text: string
  /** The number of the action that was born here. */
  readonly action: number | null
  readonly owner: { readonly id: string; readonly name: string } | null
  readonly corrects: number | null
  readonly authorId: string
  readonly author: string
  readonly at: string
  readonly struck: {
    readonly byId: string
    readonly by: string
    readonly at: string
    readonly why: string
  } | null
}

/** A design review with its minutes. */
export interface Review {
  readonly number: number
  readonly title: string
  /** 'YYYY-MM-DD' */
  readonly heldOn: string
  readonly chairId: string
  readonly chair: string
  readonly present: readonly Present[]
  readonly lines: readonly MinuteLine[]
  readonly closed: {
    readonly byId: string
    readonly by: string
    readonly at: string
    readonly digest: string
    readonly cover: string
  } | null
}

/** A remark beside an item, a finding or a value. */
export interface Comment {
  readonly number: number
  readonly about: Subject
  readonly text: string
  readonly mentions: readonly { readonly id: string; readonly name: string }[]
  readonly authorId: string
  readonly author: string
  readonly at: string
  readonly resolved: { readonly by: string; readonly at: string } | null
  readonly action: number | null
}

/** What comments stand beside. */
export const COMMENTED_KINDS = ['item', 'finding', 'parameter'] as const
