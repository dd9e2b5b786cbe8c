import { database } from '@/lib/db/client'
import { loadCompanyRules } from '@/lib/programme/company-rules'
import { namesOf } from '@/lib/programme/names-of'
import { correctionsOf } from '@/lib/queries/corrections'
import { requirementOfRule } from '@/shared/company-rules/company-rule'
import { trainingValidMax } from '@/shared/plan/limits/control-people'
import { governingRequirement, type GoverningRequirement } from '@/shared/plan/requirement'
import type { Correction } from '@/shared/records/correction'
import { training } from '@/shared/records/kinds/training'
import type { Training } from '@/shared/training/competence'
import type { TrailKind } from '@/shared/works/works-kind'

/** A training with what became of it: corrected, withdrawn. Its values are those that stand. */
export interface RecordedTraining extends Training {
  readonly recordedIn: { readonly kind: TrailKind; readonly code: string }
  readonly recorded: { readonly by: string; readonly at: string }
  readonly withdrawn: { readonly at: string; readonly why: string } | null
  readonly corrections: readonly Correction[]
}

/** A certificate attached to a training. */
export interface Certificate {
  readonly id: string
  readonly record: string
  readonly fileName: string
  readonly note: string
  readonly by: string
  readonly at: string
}

/** All training ever recorded, at the works or in programmes of an earlier version, oldest first: four statements. */
export async function readTraining(): Promise<RecordedTraining[]> {
  const rows = await database().record.findMany({
    where: { kind: training.key },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    include: { subject: { select: { kind: true, code: true } } },
  })
  const [corrections, nameOf] = await Promise.all([
    correctionsOf(rows.map(({ id }) => id)),
    namesOf(
      database(),
      rows.map(({ addedById }) => addedById),
    ),
  ])
  return rows.map(({ id, data, subject, addedById, at, withdrawnAt, withdrawnWhy }) => {
    const own = corrections.get(id) ?? []
    const values = (own.at(-1)?.after ?? data) as unknown as Omit<Training, 'id'>
    return {
      ...values,
      id,
      recordedIn: { kind: subject.kind as TrailKind, code: subject.code },
      recorded: { by: nameOf(addedById), at: at.toISOString() },
      withdrawn: withdrawnAt && { at: withdrawnAt.toISOString(), why: withdrawnWhy ?? '' },
      corrections: own,
    }
  })
}

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
