import type { StatedLimit } from '@/shared/plan/requirement'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** One change that a notice proposes: a new value, a stated requirement, or one taken away. */
export type ProposedChange =
  | {
      readonly kind: 'value'
      readonly parameter: string
      readonly value: JsonValue
      /** The revision it was proposed over; 0 for none. */
      readonly seen: number
    }
  | ({ readonly kind: 'requirement' } & StatedLimit)
  | ({ readonly kind: 'withdrawal'; readonly requirement: string } & Pick<
      StatedLimit,
      'limit' | 'authority' | 'document' | 'value'
    >)

export interface NoticeChange {
  readonly id: string
  readonly change: ProposedChange
  readonly reason: string
  readonly authorId: string
  readonly authorName: string
  readonly at: string
}

/** What a change is made to: two changes of one thing in a notice would contradict each other. */
export const targetOf = (change: ProposedChange): string => {
  switch (change.kind) {
    case 'value':
      return `value ${change.parameter}`
    case 'requirement':
      return `requirement ${change.limit} ${change.authority} ${change.document}`
    case 'withdrawal':
      return `withdrawal ${change.requirement}`
  }
}
