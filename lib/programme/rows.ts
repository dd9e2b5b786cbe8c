import type {
  Action,
  AnswerFile as AnswerFileRow,
  Concession,
  GateSignature,
  Inspection as InspectionRow,
  Lot as LotRow,
  LotTest as LotTestRow,
} from '@/lib/db/generated/client'
import { dateAtWorks } from '@/lib/settings/works'
import type { BatchReadings } from '@/lib/programme/readings-cache'
import type { DepartureBounds } from '@/shared/gate/deviation-permit'
import { answerOf, type ActionAnswer, type FirstAnswer } from '@/shared/gate/action-answer'
import type {
  ActionEntry,
  ActionKind,
  ConcessionEntry,
  GateSignatureEntry,
  SignedOn,
} from '@/shared/gate/programme-state'
import type { LotKind } from '@/shared/methods/lot-kind'
import type { Department } from '@/shared/plan/department'
import type { Stage } from '@/shared/plan/stage'
import type { Defect, Inspection } from '@/shared/records/inspection'
import type { Lot, LotStorage, LotTest } from '@/shared/records/lot'

/** The name of a person by id. */
export type Named = (personId: string) => string

export const lotOf = (row: LotRow, tests: readonly LotTestRow[], readings: BatchReadings): Lot => ({
  id: row.id,
  code: row.code,
  kind: row.kind as LotKind,
  part: row.part,
  supplier: row.supplier,
  dateCode: row.dateCode,
  quantity: row.quantity,
  receivedOn: row.receivedOn,
  storage: row.storage as unknown as LotStorage,
  supplierResult: row.supplierResult,
  ...(row.expiresOn !== null && { expiresOn: row.expiresOn }),
  tests: tests.map((test) => lotTestOf(test, readings)),
  disposition: row.disposition as Lot['disposition'],
  usedIn: row.usedIn,
})

const lotTestOf = (row: LotTestRow, readings: BatchReadings): LotTest => ({
  id: row.id,
  method: row.method,
  testedOn: row.testedOn,
  testedBy: row.testedBy,
  instrumentId: row.instrumentId,
  conditions: row.conditions as LotTest['conditions'],
  readings: readings.ofTest(row.id),
})

export const inspectionOf = (row: InspectionRow): Inspection => ({
  id: row.id,
  assembly: row.assembly,
  inspectedOn: row.inspectedOn,
  inspector: row.inspector,
  magnification: row.magnification,
  jointsSeen: row.jointsSeen,
  defects: row.defects as unknown as Defect[],
  note: row.note,
})

export const actionEntry = (row: Action, files: readonly AnswerFileRow[], nameOf: Named): ActionEntry => ({
  id: row.id,
  number: row.number,
  itemKey: row.itemKey,
  from: row.from as Department,
  to: row.to as Department,
  kind: row.kind as ActionKind,
  question: row.question,
  dueOn: row.dueOn,
  askedById: row.askedById,
  askedByName: nameOf(row.askedById),
  askedAt: row.askedAt.toISOString(),
  askedOf: row.askedOfId ? { id: row.askedOfId, name: nameOf(row.askedOfId) } : null,
  study: row.study,
  answer: row.answer === null ? null : answerOf(row.answer as unknown as ActionAnswer | FirstAnswer),
  files: files.map(({ id, sha256, fileName, note, addedById, at }) => ({
    id,
    sha256,
    fileName,
    note,
    addedByName: nameOf(addedById),
    at: at.toISOString(),
  })),
  answeredById: row.answeredById,
  answeredByName: row.answeredById && nameOf(row.answeredById),
  answeredAt: row.answeredAt?.toISOString() ?? null,
  outcome: row.outcome as ActionEntry['outcome'],
  outcomeWhy: row.outcomeWhy,
})

export const concessionEntry = (row: Concession, nameOf: Named): ConcessionEntry => ({
  id: row.id,
  number: row.number,
  itemKey: row.itemKey,
  rule: row.rule,
  findingDigest: row.findingDigest,
  findingData: row.findingData,
  permit: row.permit as unknown as DepartureBounds | null,
  why: row.why,
  quantity: row.quantity,
  untilOn: row.untilOn,
  requestedById: row.requestedById,
  requestedByName: nameOf(row.requestedById),
  requestedAt: row.requestedAt.toISOString(),
  design: signed(row.designById, row.designName, row.designAt),
  quality: signed(row.qualityById, row.qualityName, row.qualityAt),
  refused:
    row.refusedById && row.refusedAt
      ? {
          byId: row.refusedById,
          byName: nameOf(row.refusedById),
          at: row.refusedAt.toISOString(),
          why: row.refusedWhy ?? '',
        }
      : null,
})

const signed = (byId: string | null, byName: string | null, at: Date | null): SignedOn | null =>
  byId && byName && at ? { byId, byName, at: at.toISOString(), on: dateAtWorks(at) } : null

export const gateSignatureEntry = (row: GateSignature): GateSignatureEntry => ({
  id: row.id,
  stage: row.stage as Stage,
  department: row.department as Department,
  personId: row.personId,
  personName: row.personName,
  digest: row.digest,
  signedContent: row.cover,
  merkleRoot: row.merkleRoot,
  trailSeq: row.trailSeq,
  headHash: row.headHash,
  at: row.at.toISOString(),
})
