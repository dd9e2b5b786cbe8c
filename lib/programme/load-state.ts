import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { plannedItems } from '@/lib/programme/planned-items'
import { loadReadings } from '@/lib/programme/readings-cache'
import {
  actionEntry,
  concessionEntry,
  gateSignatureEntry,
  inspectionOf,
  logOf,
  lotOf,
  type Named,
} from '@/lib/programme/rows'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'
import type { LessonRef } from '@/shared/plan/lesson-ref'
import type { Authority } from '@/shared/plan/requirement'
import { groupedBy } from '@/shared/grouped-by'

/** Reads all facts of one programme, a bounded number of statements whatever its size. */
export async function loadState(
  db: PrismaClient | Transaction,
  programmeId: string,
  today: string,
): Promise<ProgrammeState> {
  const own = { where: { programmeId } }
  const inForce = { where: { programmeId, withdrawnAt: null } }
  const inOrder = { orderBy: [{ at: 'asc' as const }, { id: 'asc' as const }] }
  const [programme, memberships, people, planRows, revisions, requirements, evidence] = await Promise.all([
    db.programme.findUniqueOrThrow({
      where: { id: programmeId },
      select: { id: true, code: true, title: true, leadId: true },
    }),
    db.membership.findMany({
      ...own,
      select: { personId: true, department: true },
      orderBy: [{ department: 'asc' }, { since: 'asc' }],
    }),
    db.person.findMany({ select: { id: true, name: true } }),
    db.planItem.findMany({ ...own, orderBy: { position: 'asc' } }),
    db.revision.findMany({
      ...own,
      orderBy: [{ parameter: 'asc' }, { number: 'desc' }],
      distinct: ['parameter'],
    }),
    db.requirement.findMany({ ...inForce, ...inOrder }),
    // Pictures of what is no item are shown where they belong, and nothing rests on them.
    db.evidence.findMany({
      where: { programmeId, withdrawnAt: null, itemKey: { not: null } },
      ...inOrder,
    }),
  ])
  const [lots, lotTests, logs, batches, inspections, instruments, records, corrections] = await Promise.all([
    db.lot.findMany({ ...own, ...inOrder }),
    db.lotTest.findMany({ ...inForce, ...inOrder }),
    db.log.findMany({ ...own, ...inOrder }),
    db.readingBatch.findMany({ ...own, ...inOrder, select: { id: true, lotTestId: true, logId: true } }),
    db.inspection.findMany({ ...inForce, ...inOrder }),
    db.instrument.findMany({ orderBy: { tag: 'asc' } }),
    db.record.findMany({ ...inForce, ...inOrder, select: { id: true, kind: true, data: true } }),
    db.correction.findMany({
      ...own,
      orderBy: [{ subjectId: 'asc' }, { number: 'desc' }],
      distinct: ['subjectId'],
      select: { subjectId: true, values: true },
    }),
  ])
  const corrected = new Map(corrections.map(({ subjectId, values }) => [subjectId, values as object]))
  const asCorrected = <Row extends { readonly id: string }>(row: Row): Row => ({
    ...row,
    ...corrected.get(row.id),
  })
  const [actions, answerFiles, approvals, concessions, gateSignatures] = await Promise.all([
    db.action.findMany({ ...own, orderBy: { number: 'asc' } }),
    db.answerFile.findMany({ ...own, ...inOrder }),
    db.approval.findMany({ ...own, ...inOrder }),
    db.concession.findMany({ ...own, orderBy: { number: 'asc' } }),
    db.gateSignature.findMany({ ...own, ...inOrder }),
  ])
  const filesOf = groupedBy(answerFiles, ({ action }) => action)
  const readings = await loadReadings(db, batches)
  const nameOf: Named = (id) => people.find((person) => person.id === id)?.name ?? 'somebody unknown'

  return {
    programme,
    members: memberships.map(({ personId, department }) => ({
      personId,
      name: nameOf(personId),
      department: department as Department,
    })),
    items: plannedItems(planRows),
    revisions: new Map(
      revisions.map(({ parameter, number, value, reason, authorId, at }) => [
        parameter,
        { parameter, number, value, reason, authorId, authorName: nameOf(authorId), at: at.toISOString() },
      ]),
    ),
    facts: {
      values: new Map(revisions.map(({ parameter, value }) => [parameter, value])),
      requirements: requirements.map(
        ({ id, limit, authority, document, clause, value, relaxes, reason, lesson }) => ({
          id,
          limit,
          authority: authority as Authority,
          document,
          clause,
          value,
          relaxes,
          reason,
          lesson: lesson as LessonRef | null,
        }),
      ),
      records: {
        lots: lots.map((lot) =>
          lotOf(
            asCorrected(lot),
            lotTests.filter(({ lotId }) => lotId === lot.id).map(asCorrected),
            readings,
          ),
        ),
        logs: groupedBy(
          logs.map((log) => logOf(log, readings)),
          ({ characteristic }) => characteristic,
        ),
        inspections: inspections.map((row) => inspectionOf(asCorrected(row))),
        instruments: instruments.map(({ id, tag, measures, calibratedOn, dueOn, certificate, outOfUse }) => ({
          id,
          tag,
          measures,
          calibratedOn,
          dueOn,
          certificate,
          outOfUse,
        })),
        byKind: recordsByKind(records, corrected),
      },
      today,
    },
    evidence: evidence.map(({ id, itemKey, kind, note, sha256, fileName, url, addedById, at }) => ({
      id,
      itemKey: itemKey ?? '',
      kind,
      note,
      sha256,
      fileName,
      url,
      addedById,
      addedByName: nameOf(addedById),
      at: at.toISOString(),
    })),
    actions: actions.map((row) => actionEntry(row, filesOf.get(row.number) ?? [], nameOf)),
    approvals: approvals.map(
      ({ id, itemKey, department, personId, personName, digest, cover, found, at }) => ({
        id,
        itemKey,
        department: department as Department,
        personId,
        personName,
        digest,
        signedContent: cover,
        found,
        at: at.toISOString(),
      }),
    ),
    concessions: concessions.map((row) => concessionEntry(row, nameOf)),
    gateSignatures: gateSignatures.map(gateSignatureEntry),
  }
}

/** A record's values are one member of its row: a correction stands for all of them. */
function recordsByKind(
  rows: readonly { id: string; kind: string; data: unknown }[],
  corrected: ReadonlyMap<string, object>,
) {
  return groupedBy(
    rows,
    ({ kind }) => kind,
    ({ id, data }) => ({ ...(corrected.get(id) ?? (data as object)), id }),
  )
}
