import { itemNamed } from '@/lib/exports/tables/item-named'
import {
  dayOf,
  declaredColumns,
  exportTable,
  instantOf,
  numberOf,
  textOf,
  type ExportTable,
} from '@/lib/exports/tables/export-table'
import { readNonconformities } from '@/lib/queries/nonconformities'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { readReviews, type ReviewInBrief } from '@/lib/queries/reviews'
import { findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { kindOf } from '@/shared/columns/column-kinds'
import { columnHeading } from '@/shared/columns/column-heading'
import type { AnsweredLine } from '@/shared/cost/cost-line'
import type { ActionEntry, ConcessionEntry, Member } from '@/shared/gate/programme-state'
import type { Nonconformity } from '@/shared/nonconformities/nonconformity'
import type { Parameter } from '@/shared/plan/parameter'
import type { Finding } from '@/shared/rules/finding'
import type { AnyRule } from '@/shared/rules/rule'
import { AMOUNT_COLUMNS } from '@/lib/exports/tables/amount-columns'

/* Tables of what was specified, found and decided. */

/** The rows of a table parameter, or the one value of another; undefined where there is no such parameter. */
export function parameterTable({ state }: ProgrammeView, key: string): ExportTable | undefined {
  const parameter = findParameter(key)
  if (!parameter) return undefined
  const value = state.facts.values.get(key)
  const { shape } = parameter
  return shape.kind === 'table'
    ? exportTable(key, declaredColumns(shape.columns), (value ?? []) as Readonly<Record<string, unknown>>[])
    : exportTable(key, declaredColumns({ value: shape.column }), value === undefined ? [] : [{ value }])
}

interface SpecifiedRow {
  readonly item: string
  readonly parameter: Parameter
}

/** Every parameter that is one value, with what is specified. */
export function specificationTable({ state }: ProgrammeView): ExportTable {
  const rows: SpecifiedRow[] = state.items.flatMap(({ definition }) =>
    definition.parameters
      .filter((parameter) => parameter.shape.kind === 'field')
      .map((parameter) => ({ item: definition.title, parameter })),
  )
  const valueOf = ({ parameter: { key, shape } }: SpecifiedRow) => {
    const value = state.facts.values.get(key)
    if (shape.kind !== 'field' || value === undefined) return undefined
    return typeof value === 'number' ? value : kindOf(shape.column).inWords(shape.column, value)
  }
  return exportTable<SpecifiedRow>(
    'specification',
    [
      textOf('Item', ({ item }) => item),
      textOf('Parameter', ({ parameter }) =>
        parameter.shape.kind === 'field'
          ? columnHeading({ ...parameter.shape.column, label: parameter.label })
          : parameter.label,
      ),
      textOf('Key', ({ parameter }) => parameter.key),
      { heading: 'Value', kind: 'text', cell: valueOf },
      numberOf('Revision', ({ parameter }) => state.revisions.get(parameter.key)?.number),
      textOf('By', ({ parameter }) => state.revisions.get(parameter.key)?.authorName),
      instantOf('At', ({ parameter }) => state.revisions.get(parameter.key)?.at),
      textOf('Why', ({ parameter }) => state.revisions.get(parameter.key)?.reason),
    ],
    rows,
  )
}

interface JudgedRow {
  readonly item: string
  readonly rule: AnyRule
  readonly finding: Finding | undefined
}

export const findingsTable = ({ state, judgement }: ProgrammeView): ExportTable =>
  exportTable<JudgedRow>(
    'findings',
    [
      textOf('Item', ({ item }) => item),
      textOf('Rule', ({ rule }) => rule.title),
      textOf('Verdict', ({ finding }) => finding?.verdict),
      textOf('Found', ({ finding }) => finding?.found),
      textOf('What to do', ({ finding }) => finding?.remedy?.message),
    ],
    state.items.flatMap(({ definition }) =>
      definition.rules.map((rule) => ({
        item: definition.title,
        rule,
        finding: judgement.findings.get(rule.id),
      })),
    ),
  )

export const actionsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<ActionEntry>(
    'actions',
    [
      numberOf('Action', ({ number }) => number),
      textOf('Item', ({ itemKey }) => itemNamed(state, itemKey)),
      textOf('Kind', ({ kind }) => kind),
      textOf('From', ({ from }) => from),
      textOf('To', ({ to }) => to),
      textOf('Asked of', ({ askedOf }) => askedOf?.name),
      textOf('Question', ({ question }) => question),
      dayOf('Due', ({ dueOn }) => dueOn),
      textOf('Asked by', ({ askedByName }) => askedByName),
      instantOf('Asked at', ({ askedAt }) => askedAt),
      textOf('Answered by', ({ answeredByName }) => answeredByName),
      instantOf('Answered at', ({ answeredAt }) => answeredAt),
      textOf('Outcome', ({ outcome }) => outcome),
    ],
    state.actions,
  )

/** Amounts that answers name, a row each; a range by its two ends. */
export const costsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<{ action: ActionEntry; line: AnsweredLine }>(
    'costs',
    [
      numberOf('Action', ({ action }) => action.number),
      textOf('Item', ({ action }) => itemNamed(state, action.itemKey)),
      textOf('What', ({ line }) => line.kind),
      textOf('For', ({ line }) => line.per),
      ...AMOUNT_COLUMNS,
      textOf('Alternative', ({ line }) => line.alternative),
    ],
    state.actions.flatMap((action) => (action.answer?.amounts ?? []).map((line) => ({ action, line }))),
  )

export const concessionsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<ConcessionEntry>(
    'concessions',
    [
      numberOf('Concession', ({ number }) => number),
      textOf('Item', ({ itemKey }) => itemNamed(state, itemKey)),
      textOf('Rule', ({ rule }) => findRule(rule)?.title ?? rule),
      textOf('Why', ({ why }) => why),
      numberOf('Quantity', ({ quantity }) => quantity),
      dayOf('Until', ({ untilOn }) => untilOn),
      textOf('Asked by', ({ requestedByName }) => requestedByName),
      instantOf('Asked at', ({ requestedAt }) => requestedAt),
      textOf('Design', ({ design }) => design?.byName),
      textOf('Quality', ({ quality }) => quality?.byName),
      textOf('Refused by', ({ refused }) => refused?.byName),
    ],
    state.concessions,
  )

export const nonconformitiesTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<Nonconformity>(
    'nonconformities',
    [
      numberOf('Nonconformity', ({ number }) => number),
      textOf('Title', ({ title }) => title),
      textOf('Found', ({ found }) => found),
      dayOf('Found on', ({ foundOn }) => foundOn),
      textOf('Owner', ({ owner }) => owner),
      textOf('Opened by', ({ openedBy }) => openedBy),
      instantOf('Opened at', ({ at }) => at),
      textOf('Steps', ({ steps }) =>
        steps
          .filter(({ withdrawn }) => withdrawn === null)
          .map(({ kind, text, doneOn }) => `${kind}, ${doneOn}: ${text}`)
          .join(' | '),
      ),
    ],
    await readNonconformities(state.programme.id),
  )

export const reviewsTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<ReviewInBrief>(
    'reviews',
    [
      numberOf('Review', ({ number }) => number),
      textOf('Title', ({ title }) => title),
      dayOf('Held', ({ heldOn }) => heldOn),
      textOf('Chair', ({ chair }) => chair),
      numberOf('Lines', ({ lines }) => lines),
      instantOf('Minutes signed', ({ closedAt }) => closedAt),
    ],
    await readReviews(state.programme.id),
  )

/** The people of the programme, a row for each department that somebody is of. */
export const membersTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<Member>(
    'members',
    [
      textOf('Name', ({ name }) => name),
      textOf('Department', ({ department }) => department),
      textOf('Leads', ({ personId }) => (personId === state.programme.leadId ? 'yes' : 'no')),
    ],
    state.members,
  )
