import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { plannedItems } from '@/lib/programme/planned-items'
import { loadReadings } from '@/lib/programme/readings-cache'
import {
  actionEntry,
  concessionEntry,
  gateSignatureEntry,
  inspectionOf,
  type Named,
} from '@/lib/programme/rows'
import { lotsOfProgramme } from '@/lib/programme/works/lots-of-programme'
import { loadLotRows, ownLots } from '@/lib/programme/works/shared-lots'
import { loadListedParts } from '@/lib/programme/works/listed-parts'
import { logFor } from '@/lib/programme/works/readings-of-logs'
import { loadBatches, loadLogs } from '@/lib/programme/works/shared-logs'
import { correctedBy, newestCorrectionsWhere } from '@/lib/programme/works/newest-corrections'
import { loadRecords, recordsHere, speaksFor, type LoadedRecord } from '@/lib/programme/works/shared-records'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'
import type { LessonRef } from '@/shared/plan/lesson-ref'
import type { Authority } from '@/shared/plan/requirement'
import { groupedBy } from '@/shared/grouped-by'
import type { SolderingRun } from '@/shared/records/soldering-work'

/** Reads all facts of one programme, a bounded number of statements whatever its size. */
export async function loadState(
  db: PrismaClient | Transaction,
  programmeId: string,
  today: string,
): Promise<ProgrammeState> {
  const own = { where: { programmeId } }
  const inForce = { where: { programmeId, withdrawnAt: null } }
  const inOrder = { orderBy: [{ at: 'asc' as const }, { id: 'asc' as const }] }
  const [programme, memberships, people, planRows, revisions, requirements, evidence, logs] =
    await Promise.all([
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
        where: { trailId: programmeId, withdrawnAt: null, itemKey: { not: null } },
        ...inOrder,
      }),
      loadLogs(db, programmeId),
    ])
  const itsLots = await ownLots(db, programme)
  const lotRows = await loadLotRows(db, itsLots)
  const [batches, inspections, instruments, loadedRecords] = await Promise.all([
    loadBatches(db, programmeId, lotRows.tests),
    db.inspection.findMany({ ...inForce, ...inOrder }),
    db.instrument.findMany({ orderBy: { tag: 'asc' } }),
    loadRecords(db, programmeId, logs),
  ])
  const parts = await loadListedParts(db, programmeId)
  const records = recordsHere(loadedRecords, logs, programme)
  const fromElsewhere = records.filter(({ trailId }) => trailId !== programmeId).map(({ id }) => id)
  const corrected = await newestCorrectionsWhere(db, {
    OR: [{ trailId: programmeId }, { subjectId: { in: fromElsewhere } }],
  })
  const asCorrected = correctedBy(corrected)
  const [actions, answerFiles, approvals, concessions, gateSignatures] = await Promise.all([
    db.action.findMany({ ...own, orderBy: { number: 'asc' } }),
    db.answerFile.findMany({ ...own, ...inOrder }),
    db.approval.findMany({ ...own, ...inOrder }),
    db.concession.findMany({ ...own, orderBy: { number: 'asc' } }),
    db.gateSignature.findMany({ ...own, ...inOrder }),
  ])
  const filesOf = groupedBy(answerFiles, ({ action }) => action)
  const readings = await loadReadings(db, batches)
  const lots = lotsOfProgramme(lotRows, itsLots, readings, programme.code)
  const byKind = recordsByKind(
    records.map((record) => ({ ...record, data: corrected.get(record.id) ?? record.data })),
    { programmeId, lots: lots.lots },
  )
  const runs = (byKind.get('soldering-run') ?? []) as unknown as readonly SolderingRun[]
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
        ({ id, limit, authority, document, clause, value, relaxes, reason, lesson, companyRule }) => ({
          id,
          limit,
          authority: authority as Authority,
          document,
          clause,
          value,
          relaxes,
          reason,
          lesson: lesson as LessonRef | null,
          ...(companyRule !== null && { companyRule }),
        }),
      ),
      records: {
        ...lots,
        logs: groupedBy(
          logs.map((log) => logFor(log, { programme, runs, readings })),
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
        parts,
        byKind,
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
const recordsByKind = (
  rows: readonly (LoadedRecord & { readonly data: unknown })[],
  ofWhom: Parameters<typeof speaksFor>[1],
) =>
  groupedBy(
    rows.filter((row) => speaksFor(row, ofWhom)),
    ({ kind }) => kind,
    ({ id, data }) => ({ ...(data as object), id }),
  )
