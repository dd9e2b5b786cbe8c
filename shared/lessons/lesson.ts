import type { LessonRef } from '@/shared/plan/lesson-ref'
import type { LessonChange } from './lesson-change'

/** What a lesson was learnt from, with its words at the time. */
export interface LessonSource {
  readonly kind: 'finding' | 'item' | 'record'
  /** The rule's id, the item's key, or the record's id. */
  readonly key: string
  readonly says: string
}

/** What one programme learnt, and the change it proposes for those opened later. */
export interface Lesson {
  readonly programme: string
  readonly number: number
  readonly title: string
  readonly learnt: string
  readonly source: LessonSource
  readonly change: LessonChange
  readonly proposed: { readonly byId: string; readonly byName: string; readonly at: string }
  readonly decided: {
    readonly accepted: boolean
    readonly why: string
    readonly byId: string
    readonly byName: string
    readonly at: string
  } | null
  /** Accepted once, and not brought into programmes any more. */
  readonly retired: {
    readonly why: string
    readonly byId: string
    readonly byName: string
    readonly at: string
  } | null
}

/** "LX-41, lesson 2". */
export const lessonName = ({ programme, number }: LessonRef): string => `${programme}, lesson ${number}`

/** Where an item or a limit that a lesson brought comes from, as a sentence. */
export const learntIn = (lesson: LessonRef): string => `Learnt in ${lessonName(lesson)}.`

/** In the order of what wants a hand. */
export const LESSON_STANDINGS = ['proposed', 'accepted', 'retired', 'declined'] as const
export type LessonStatus = (typeof LESSON_STANDINGS)[number]

export function lessonStatus({ decided, retired }: Pick<Lesson, 'decided' | 'retired'>): LessonStatus {
  if (!decided) return 'proposed'
  if (!decided.accepted) return 'declined'
  return retired ? 'retired' : 'accepted'
}

/** Why this person may not decide on a lesson, beyond what the policy says; undefined when they may. */
export function lessonDecisionRefusal(
  lesson: Pick<Lesson, 'programme' | 'number' | 'proposed' | 'decided'>,
  personId: string,
): string | undefined {
  if (lesson.decided)
    return `${lesson.decided.byName} has ${lesson.decided.accepted ? 'accepted' : 'declined'} it already, on ${lesson.decided.at.slice(0, 10)}.`
  return lesson.proposed.byId === personId ? 'You proposed it. Somebody else of quality decides.' : undefined
}

/** Why a lesson cannot be retired; undefined when it can. Anybody of quality may, since it only lessens what is asked. */
export function lessonRetirementRefusal(lesson: Pick<Lesson, 'decided' | 'retired'>): string | undefined {
  switch (lessonStatus(lesson)) {
    case 'accepted':
      return undefined
    case 'retired':
      return `${lesson.retired?.byName} has retired it already, on ${lesson.retired?.at.slice(0, 10)}.`
    case 'proposed':
    case 'declined':
      return 'Only an accepted lesson comes into later programmes; this one does not.'
  }
}
