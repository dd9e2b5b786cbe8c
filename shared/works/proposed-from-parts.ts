import { coatingColumns, type LeadFinish } from '@/shared/plan/parameters/finishes'
import { leadColumns, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { jointsOf, PART_KINDS } from './part-kind'
import { componentFinder, type KnownComponent, type OnBoard } from './parts-on-board'

/** A row as far as the parts know it: what they cannot know is left for the person. */
type Proposed<Row> = Partial<Row>

/** What a component cell holds in either table. */
const COMPONENT_LENGTH = 60

/**
 * The table of holes and leads as the parts list has it: one row for each part soldered through holes. Rows that stand
 * keep their holes and lands, and take lead, joints and way of soldering from the part; what the list does not know stays.
 */
export function leadHolesFromParts(
  onBoard: readonly OnBoard[],
  before: readonly LeadHole[],
): Proposed<LeadHole>[] {
  const find = componentFinder(onBoard)
  const once = (component: string): boolean =>
    before.filter((row) => row.component.trim() === component.trim()).length === 1
  const kept = before.map((row): Proposed<LeadHole> => {
    const known = find(row.component)
    if (!known) return row
    const joints = once(row.component) ? jointsIn(known) : undefined
    return {
      ...row,
      ...sharedValues(known, leadColumns),
      ...(joints !== undefined && { joints }),
      ...sharedSoldering(known),
    }
  })
  return [...kept, ...missing(onBoard, before, find).map(newHole)]
}

/** The finishes of the leads as the parts have them, by the same rule. */
export function leadFinishesFromParts(
  onBoard: readonly OnBoard[],
  before: readonly LeadFinish[],
): Proposed<LeadFinish>[] {
  const find = componentFinder(onBoard)
  const kept = before.map((row): Proposed<LeadFinish> => {
    const known = find(row.component)
    return known ? { ...row, ...sharedValues(known, coatingColumns) } : row
  })
  const added = missing(onBoard, before, find).map((entry) => ({
    component: componentOf(entry),
    ...valuesOf(entry, coatingColumns),
  }))
  return [...kept, ...(added as Proposed<LeadFinish>[])]
}

/** Joints without a hole, pieces times terminations; undefined while a part that may have some does not say. */
export function surfaceJointsFromParts(onBoard: readonly OnBoard[]): number | undefined {
  let sum = 0
  for (const { row, part } of onBoard) {
    if (!part) {
      if (row.soldered !== undefined) return undefined
      continue
    }
    if (jointsOf(part.values.kind) !== 'on the surface') continue
    if (part.values.leads === undefined) return undefined
    sum += row.quantity * part.values.leads
  }
  return sum
}

/** A row of the parts to be evaluated, as far as the parts list knows it. */
export interface ProposedLot {
  readonly part: string
  readonly kind: string
  readonly method?: string
}

/** The parts to be evaluated: the rows that stand, and one for each part of the list that none of them names. */
export function lotsFromParts<Row extends ProposedLot>(
  onBoard: readonly OnBoard[],
  before: readonly Row[],
): (Row | ProposedLot)[] {
  const find = componentFinder(onBoard)
  const named = new Set(before.flatMap(({ part }) => namedBy(part, find)))
  const added = new Map(
    onBoard
      .filter(({ at, part }) => part && !named.has(at))
      .map((entry): [string, ProposedLot] => [
        entry.row.part,
        { part: lotName(entry), kind: PART_KINDS[entry.part!.values.kind].lot },
      ]),
  )
  return [...before, ...added.values()]
}

/** "resistors R1–R40" names what R1–R40 names; so does "R1–R40 resistors". */
function namedBy(part: string, find: (component: string) => KnownComponent | undefined): number[] {
  const [first = '', ...rest] = part.trim().split(/\s+/)
  const known =
    find(part) ?? find(rest.join(' ')) ?? find(first) ?? (rest.length > 1 ? find(rest.at(-1)!) : undefined)
  return known?.rows.map(({ of }) => of.at) ?? []
}

const LOT_NAME_LENGTH = 80
/** As its lots will name it, with its references where there is room, so that the hole table's component is found in it. */
function lotName({ row }: OnBoard): string {
  const whole = row.references === undefined ? row.part : `${row.part} ${row.references}`
  return whole.length <= LOT_NAME_LENGTH ? whole : row.part
}

/** Rows of the list soldered through holes whose part is described, and that no row before stands for. */
function missing(
  onBoard: readonly OnBoard[],
  before: readonly { readonly component: string }[],
  find: (component: string) => KnownComponent | undefined,
): OnBoard[] {
  const standing = new Set(
    before.flatMap(({ component }) => find(component)?.rows.map(({ of }) => of.at) ?? []),
  )
  return onBoard.filter(
    ({ at, part }) => part && jointsOf(part.values.kind) === 'through holes' && !standing.has(at),
  )
}

function newHole(entry: OnBoard): Proposed<LeadHole> {
  const { row, part } = entry
  const leads = part?.values.leads
  return {
    component: componentOf(entry),
    ...(leads !== undefined && { joints: row.quantity * leads, leadsEach: leads }),
    ...(row.soldered !== undefined && { soldered: row.soldered }),
    ...valuesOf(entry, leadColumns),
  }
}

/** References as far as a cell holds them whole; else the part number. */
const componentOf = ({ row }: OnBoard): string =>
  row.references !== undefined && row.references.length <= COMPONENT_LENGTH
    ? row.references
    : row.part.slice(0, COMPONENT_LENGTH)

const valuesOf = ({ part }: OnBoard, columns: object): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(part?.values ?? {}).filter(
      ([column, value]) => column in columns && value !== undefined && value !== null,
    ),
  )

/** The values that all parts of a component say, and say alike. */
function sharedValues({ rows }: KnownComponent, columns: object): Readonly<Record<string, unknown>> {
  const [first, ...others] = rows.map(({ of }) => valuesOf(of, columns))
  return Object.fromEntries(
    Object.entries(first ?? {}).filter(([column, value]) =>
      others.every((values) => values[column] === value),
    ),
  )
}

function sharedSoldering({ rows }: KnownComponent): Pick<Proposed<LeadHole>, 'soldered'> {
  const ways = new Set(rows.map(({ of }) => of.row.soldered))
  const [way] = ways
  return ways.size === 1 && way !== undefined ? { soldered: way } : {}
}

function jointsIn({ rows }: KnownComponent): number | undefined {
  const counts = rows.map(({ of, pieces }) => pieces * (of.part?.values.leads ?? Number.NaN))
  const sum = counts.reduce((all, one) => all + one, 0)
  return Number.isNaN(sum) ? undefined : sum
}
