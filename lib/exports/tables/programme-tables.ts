import * as agreed from '@/lib/exports/tables/agreed-tables'
import * as decided from '@/lib/exports/tables/decided-tables'
import type { ExportTable } from '@/lib/exports/tables/export-table'
import * as recorded from '@/lib/exports/tables/recorded-tables'
import * as signed from '@/lib/exports/tables/signed-tables'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ownMember } from '@/shared/own-member'

/** A table of a programme; `of` names which one, where there are several of its sort. */
type MakeTable = (
  view: ProgrammeView,
  of: string,
) => ExportTable | undefined | Promise<ExportTable | undefined>

/** Every table of a programme that leaves for a spreadsheet, by its place in the address. The trail leaves by routes of its own. */
const PROGRAMME_TABLES = {
  specification: decided.specificationTable,
  parameter: decided.parameterTable,
  findings: decided.findingsTable,
  actions: decided.actionsTable,
  costs: decided.costsTable,
  concessions: decided.concessionsTable,
  nonconformities: decided.nonconformitiesTable,
  reviews: decided.reviewsTable,
  comments: signed.commentsTable,
  members: decided.membersTable,
  lessons: agreed.lessonsTable,
  alternatives: agreed.alternativesTable,
  'alternative-costs': agreed.alternativeCostsTable,
  'change-notices': agreed.changeNoticesTable,
  'change-answers': agreed.changeAnswersTable,
  evidence: signed.evidenceTable,
  approvals: signed.approvalsTable,
  'gate-signatures': signed.gateSignaturesTable,
  lots: recorded.lotsTable,
  'lot-tests': recorded.lotTestsTable,
  'test-readings': recorded.testReadingsTable,
  logs: recorded.logsTable,
  'log-readings': recorded.logReadingsTable,
  records: recorded.recordsTable,
  inspections: recorded.inspectionsTable,
  defects: recorded.defectsTable,
  assemblies: recorded.assembliesTable,
} as const satisfies Readonly<Record<string, MakeTable>>

export type ProgrammeTable = keyof typeof PROGRAMME_TABLES

/** The names of all of them. */
export const PROGRAMME_TABLE_NAMES = Object.keys(PROGRAMME_TABLES) as readonly ProgrammeTable[]

/** The table of that name; undefined where there is none, or it is of nothing that is there. */
export async function programmeTable(
  view: ProgrammeView,
  name: string,
  of: string,
): Promise<ExportTable | undefined> {
  const make: MakeTable | undefined = ownMember(PROGRAMME_TABLES, name)
  return make?.(view, of)
}
