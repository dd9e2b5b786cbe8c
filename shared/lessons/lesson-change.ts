import { z } from 'zod'
import { addedItemSchema, storedItem } from '@/shared/catalogue/added-item'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { impossibleLimit } from '@/shared/plan/limit-range'
import { isStricter } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'

/** What later programmes get: an item of their plan, or a stricter company limit. */
export const lessonChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('item'),
    item: addedItemSchema.transform(storedItem),
  }),
  z.strictObject({
    kind: z.literal('limit'),
    limit: z.string().refine((key) => findLimit(key) !== undefined, 'Choose one of the listed limits.'),
    value: z.number({ error: 'The limit must be a number.' }),
  }),
])
export type LessonChange = z.infer<typeof lessonChangeSchema>

/** Why a proposed change would change nothing or cannot be; undefined when it would change something. */
export function changeRefused(change: LessonChange): string | undefined {
  if (change.kind === 'item') return undefined
  const limit = findLimit(change.limit)
  if (limit && impossibleLimit(limit, change.value)) return impossibleLimit(limit, change.value)
  if (!limit || isStricter(limit, change.value, limit.byDefault.value)) return undefined
  return `Every programme starts with ${limit.direction} ${formatQuantity(limit.byDefault.value, limit.unit)}; a company limit that is no stricter changes nothing.`
}

/** Two changes ask the same of later programmes. */
export function sameChange(one: LessonChange, other: LessonChange): boolean {
  if (one.kind === 'item')
    return other.kind === 'item' && one.item.title.toLowerCase() === other.item.title.toLowerCase()
  return other.kind === 'limit' && one.limit === other.limit && one.value === other.value
}

/** What a change brings, in a few words. */
export function changeInWords(change: LessonChange): string {
  if (change.kind === 'item') return `Item “${change.item.title}”`
  const limit = findLimit(change.limit)
  return limit
    ? `${limit.label}: ${limit.direction} ${formatQuantity(change.value, limit.unit)}`
    : `Limit ${change.limit}`
}
