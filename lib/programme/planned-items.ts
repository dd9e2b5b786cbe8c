import type { PlannedItem, TailoredOut } from '@/shared/gate/programme-state'
import { addedItemSchema } from '@/shared/catalogue/added-item'
import { findItem } from '@/shared/catalogue/standard-plan'
import { STAGES, type Stage } from '@/shared/plan/stage'
import type { LessonRef } from '@/shared/plan/lesson-ref'

interface PlanRow {
  readonly key: string
  readonly stage: string
  readonly position: number
  readonly added: unknown
  readonly setAside: unknown
  readonly lesson: unknown
}

/**
 * A programme's items in route-card order. Throws on one whose definition this
 * version lacks: to leave it out would let its gate open without it.
 */
export function plannedItems(rows: readonly PlanRow[]): PlannedItem[] {
  const inOrder = [...rows].sort((a, b) => rank(a) - rank(b) || a.position - b.position)
  return inOrder.map((row) => ({
    definition: row.added ? { ...addedItemSchema.parse(row.added), key: row.key } : standardItem(row),
    added: row.added !== null,
    tailoredOut: (row.setAside as TailoredOut | null) ?? null,
    lesson: (row.lesson as LessonRef | null) ?? null,
  }))
}

const rank = ({ stage }: PlanRow): number => STAGES.indexOf(stage as Stage)

function standardItem({ key }: PlanRow) {
  const definition = findItem(key)
  if (!definition)
    throw new Error(
      `The plan holds the item ${key}, which this version does not know. Start the version that made it.`,
    )
  return definition
}
