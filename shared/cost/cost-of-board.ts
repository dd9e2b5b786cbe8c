import { processCosts, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import {
  amountOf,
  isKnown,
  isNothing,
  lessAmount,
  exactly,
  shareOfEach,
  sumOf,
  times,
  type Amount,
} from './amount'
import { expectedReworkCost } from './rework-cost'

/** What one board costs by a process when so many are made in a year: a range where its figures are, unknown where one that counts is. */
export function costOfBoard(row: ProcessCost, joints: number, volume: number) {
  const rework = reworkToExpect(row, joints)
  const running = sumOf([amountOf(row.perBoard), times(amountOf(row.perJoint), joints), rework.total])
  return { rework, running, total: sumOf([shareOfEach(amountOf(row.fixed), volume), running]) }
}

/** What rework and field repair come to. */
export interface ReworkToExpect {
  readonly here: Amount
  readonly inService: Amount
  readonly total: Amount
}

/**
 * Rework and field repair to expect of one board with so many joints, by its
 * process's row of costs. Of ranges, from the least it can be to the most: it
 * rises with every figure but the share found, whose two ends are both tried.
 */
export function reworkToExpect(row: ProcessCost, joints: number): ReworkToExpect {
  const [defects, found, failing] = [row.defectsPerMillion, row.foundPct, row.failingPct].map(amountOf)
  const [rework, fieldRepair] = [amountOf(row.perRework), amountOf(row.perFieldRepair)]
  const figures = { defects, found, failing, rework, fieldRepair } as Record<Figure, Amount>
  const many = [figures.defects, exactly(joints)]
  const isHereKnown = isProductKnown([...many, figures.found, rework])
  const isServiceKnown = isProductKnown([
    ...many,
    lessAmount(exactly(100), figures.found),
    figures.failing,
    fieldRepair,
  ])
  const corners = (['from', 'to'] as const).flatMap((end) =>
    (['from', 'to'] as const).map((foundEnd) => atCorner(figures, joints, end, foundEnd)),
  )
  const over = (part: keyof ReworkToExpect, isPartKnown: boolean): Amount => {
    const ends = corners.map((corner) => corner[part])
    return isPartKnown ? { from: Math.min(...ends), to: Math.max(...ends) } : 'unknown'
  }
  return {
    here: over('here', isHereKnown),
    inService: over('inService', isServiceKnown),
    total: over('total', isHereKnown && isServiceKnown),
  }
}

type Figure = 'defects' | 'found' | 'failing' | 'rework' | 'fieldRepair'
type End = 'from' | 'to'

/** Nothing times what is not known is nothing. */
const isProductKnown = (factors: readonly Amount[]): boolean =>
  factors.every(isKnown) || factors.some(isNothing)

/** With every figure at one end; one that is not known counts as nothing here, and what it leads to is not known. */
function atCorner(figures: Readonly<Record<Figure, Amount>>, joints: number, end: End, foundEnd: End) {
  const figure = (name: Figure, at: End): number => {
    const amount = figures[name]
    return isKnown(amount) ? amount[at] : 0
  }
  return expectedReworkCost({
    jointsPerBoard: joints,
    defectsPerMillionJoints: figure('defects', end),
    shareFound: figure('found', foundEnd) / 100,
    costOfRework: figure('rework', end),
    shareFailingInService: figure('failing', end) / 100,
    costOfFieldRepair: figure('fieldRepair', end),
  })
}

/** The figures that a row of costs leaves open, by their headings. */
export const figuresOpen = (row: ProcessCost): string[] =>
  processCosts.shape.kind === 'table'
    ? Object.entries(processCosts.shape.columns)
        .filter(([key]) => row[key as keyof ProcessCost] === undefined)
        .map(([, { label }]) => label)
    : []
