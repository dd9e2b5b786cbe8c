import { database } from '@/lib/db/client'
import { loadCompanyRules } from '@/lib/programme/company-rules'
import { namesOf } from '@/lib/programme/names-of'
import { readRecorded, type History } from '@/lib/queries/recorded'
import { requirementOfRule } from '@/shared/company-rules/company-rule'
import { trainingValidMax } from '@/shared/plan/limits/control-people'
import { governingRequirement, type GoverningRequirement } from '@/shared/plan/requirement'
import { training } from '@/shared/records/kinds/training'
import type { Training } from '@/shared/training/competence'

/** A training with what became of it: corrected, withdrawn. Its values are those that stand. */
export type RecordedTraining = Training & History

/** A certificate attached to a training. */
export interface Certificate {
  readonly id: string
  readonly record: string
  readonly fileName: string
  readonly note: string
  readonly by: string
  readonly at: string
}

/** All training ever recorded, at the works or in programmes of an earlier version, oldest first: three statements. */
export const readTraining = async (): Promise<RecordedTraining[]> =>
  (await readRecorded({ kind: training.key })).map(({ values, history }) => ({
    ...(values as unknown as Omit<Training, 'id'>),
    ...history,
  }))

/** What counts. */
export const inForce = (all: readonly RecordedTraining[]): RecordedTraining[] =>
  all.filter(({ withdrawn }) => withdrawn === null)

/** The certificates of some trainings that were not withdrawn, oldest first: two statements. */
export async function readCertificates(records: readonly string[]): Promise<Certificate[]> {
  const rows = await database().evidence.findMany({
    where: {
      subject: { kind: 'people' },
      withdrawnAt: null,
      OR: records.map((record) => ({ about: { path: ['record'], equals: record } })),
    },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  })
  const nameOf = await namesOf(
    database(),
    rows.map(({ addedById }) => addedById),
  )
  return rows.map(({ id, about, fileName, note, addedById, at }) => ({
    id,
    record: (about as { readonly record: string }).record,
    fileName: fileName ?? '',
    note,
    by: nameOf(addedById),
    at: at.toISOString(),
  }))
}

/** How long an examination is good by the company's rules, or by the plan where the company says nothing: two statements. */
export async function readValidMax(): Promise<GoverningRequirement> {
  const rules = await loadCompanyRules(database(), { limit: trainingValidMax.key, withdrawnAt: null })
  return governingRequirement(
    trainingValidMax,
    rules.map((rule) => ({ ...requirementOfRule(rule), id: rule.id, lesson: null })),
  )
}

/** The id of the trail of the people of the works. */
export async function peopleTrail(): Promise<string> {
  const people = await database().trailSubject.findUniqueOrThrow({
    where: { kind_code: { kind: 'people', code: 'people' } },
    select: { id: true },
  })
  return people.id
}
