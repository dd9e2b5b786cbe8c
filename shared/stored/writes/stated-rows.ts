import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import type { Said } from '../spoken-entry'

/** Who specified something and when; undefined where an older entry does not say who. */
interface Author {
  readonly authorId: JsonValue | undefined
  readonly at: string
}

/** The revision of a value that an entry speaks of; of a change notice where it names one. */
export const insertRevision = (
  rows: ExpectedRows,
  { parameter, number, value, reason, notice }: Said,
  { authorId, at }: Author,
): void => rows.insert('Revision', { parameter, number, value, reason, authorId, at, notice: notice ?? null })

/** The requirement that an entry speaks of, standing; of a lesson, a company rule or a change notice where it names one. */
export const insertRequirement = (
  rows: ExpectedRows,
  { id, limit, authority, document, clause, value, relaxes, reason, lesson, companyRule, notice }: Said,
  { authorId, at }: Author,
): void =>
  rows.insert('Requirement', {
    id,
    limit,
    authority,
    document,
    clause,
    value,
    relaxes,
    reason,
    lesson: lesson ?? null,
    companyRule: companyRule ?? null,
    authorId,
    at,
    withdrawnById: null,
    withdrawnAt: null,
    notice: notice ?? null,
    withdrawnNotice: null,
  })
