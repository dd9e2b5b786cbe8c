import { LESSONS_DOCUMENT } from '@/shared/plan/lessons-document'
import { findLimit } from '@/shared/catalogue/standard-plan'
import type { StoredItem } from '@/shared/catalogue/added-item'
import type { Requirement } from '@/shared/plan/requirement'
import { lessonName, type Lesson } from './lesson'
import { sameChange } from './lesson-change'
import type { LessonRef } from '@/shared/plan/lesson-ref'

/** What a programme is opened with beyond the standard plan. */
export interface OpeningChanges {
  readonly items: readonly { readonly key: string; readonly item: StoredItem; readonly lesson: LessonRef }[]
  readonly requirements: readonly (Omit<Requirement, 'id'> & {
    readonly acceptedById: string
    readonly lesson: LessonRef
  })[]
}

/**
 * What the accepted lessons bring into a programme that is opened now: items of
 * its own plan, numbered as those it adds itself, and company limits. Lessons in
 * the order they were decided; of two that ask the same, the earlier is taken,
 * and one about a limit this version does not know is left out.
 */
export function openingChanges(lessons: readonly Lesson[]): OpeningChanges {
  const accepted = lessons.filter(
    (lesson, position) =>
      lesson.decided?.accepted &&
      !lessons.slice(0, position).some((earlier) => sameChange(earlier.change, lesson.change)),
  )
  const items = accepted.flatMap((lesson) =>
    lesson.change.kind === 'item' ? [{ lesson, item: lesson.change.item }] : [],
  )
  return {
    items: items.map(({ lesson, item }, position) => ({
      key: `own-${position + 1}`,
      item,
      lesson: refTo(lesson),
    })),
    requirements: accepted.flatMap(({ change, decided, ...lesson }) =>
      change.kind === 'limit' && findLimit(change.limit) && decided
        ? [
            {
              limit: change.limit,
              authority: 'company' as const,
              document: LESSONS_DOCUMENT,
              clause: lessonName(lesson),
              value: change.value,
              relaxes: false,
              reason: lesson.learnt.slice(0, 1000),
              acceptedById: decided.byId,
              lesson: refTo(lesson),
            },
          ]
        : [],
    ),
  }
}

const refTo = ({ programme, number }: LessonRef): LessonRef => ({ programme, number })
