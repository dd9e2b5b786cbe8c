import type { Actor } from '@/shared/actor'
import type { RecordKind } from '@/shared/records/record-kind'

/** Whether a person is of a department that keeps this kind of record. */
export const keeps = (actor: Actor, { departments }: Pick<RecordKind, 'departments'>): boolean =>
  departments.some((department) => actor.departments.includes(department))
