import {
  amountOf,
  isExact,
  isKnown,
  leastOf,
  lessAmount,
  mayBeLeast,
  type Amount,
  type StoredAmount,
} from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { costOfBoard, figuresOpen } from '@/shared/cost/cost-of-board'
import { computed } from '@/shared/sources/provenance'
import { boardJoints } from '@/shared/plan/board-joints'
import { processExcessMax } from '@/shared/plan/limits/soldering-process'
import { processExcessGuard } from '@/shared/plan/limits/specification-guards'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { isStated } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Range } from '@/shared/quantity/range-text'
import {
  undetermined,
  verdictOn,
  type Judged,
  type Measured,
  type Part,
  type Verdict,
  type WorkingLine,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { breakEvenQuantity } from '@/shared/cost/break-even'
import { measure } from '@/shared/rules/measure'

export const processEconomy = rule({
  id: 'process-economy',
  title: 'Economy of the process',
  why: 'A cheap process with many defects costs more than a dear one with few, once rework and field repair are counted; how many boards are made decides where the line lies.',
  formula:
    '(cost of the chosen − least cost)/least cost ≤ most; cost = fixed/boards + board + joints · joint + rework + field repair; of ranges, the most that it can be',
  stage: 'specification',
  version: 4,
  reads: {
    process: solderingProcess,
    costs: optional(processCosts),
    holes: leadHoles,
    volume: annualVolume,
    max: processExcessMax,
    guard: processExcessGuard,
  },
  judge({ process, costs, holes, volume, max, guard }) {
    const limit = `At most ${formatQuantity(max.value, '%')} dearer than the cheapest process considered (${max.document})`
    const sources = [
      computed(
        'Fixed cost over a year’s boards, cost of board and joints, and rework and field repair to be expected',
      ),
      max.limit.byDefault.from,
    ]
    if (costs === undefined)
      return isStated(max)
        ? { ...undetermined('No costs of processes are given.', [processCosts.label], limit), sources }
        : notApplicable('No costs of processes are given, and the programme sets no limit to them.')
    const chosen = costs.find((row) => row.process === process)
    if (!chosen) {
      return undetermined(
        'The chosen process is not among the costs.',
        ['the cost of the chosen process'],
        limit,
      )
    }
    const { total: joints } = boardJoints(holes)
    const priced = costs.map((row): PricedProcess => {
      const { total } = costOfBoard(row, joints, volume)
      return { row, process: row.process, total, open: isKnown(total) ? [] : figuresOpen(row) }
    })
    const own = priced.find(({ row }) => row === chosen)!
    const working = costs.flatMap((row) => workingOf(row, joints, volume))
    const open = priced.filter(({ total }) => !isKnown(total))
    if (open.length > 0) return { ...withFiguresOpen(own, priced, limit), working, sources }
    const least = leastOf(priced, ({ total }) => total)
    const rivals = least ? [least] : mayBeLeast(priced, ({ total }) => total)
    const excess = excessOver(
      own.total,
      priced.filter((one) => one !== own).map(({ total }) => total),
    )
    const margin = {
      found: excess.to,
      limit: max.value,
      unit: '%',
      direction: 'at most',
      guardBand: (guard.value / 100) * max.value,
    } as const
    const verdict = verdictOn(margin)
    // A dearer process may be right for the joints: economy alone never fails a design.
    const judged = verdict === 'fails' ? 'marginal' : verdict
    return {
      verdict: judged,
      found: `${own.process} costs ${amountInWords(own.total)} a board, ${comparison(own, rivals, excess)}.`,
      limit,
      // Nothing is so many percent of nothing: beside a process that costs nothing no margin can be told.
      ...(Number.isFinite(excess.to) && { margin }),
      measured: {
        chosen: own.process,
        ...measuredCost(own.total),
        ...(least ? { cheapest: least.process } : { mayBeCheapest: rivals.map(({ process }) => process) }),
        ...(excess.from < excess.to && { excessFrom: measure(excess.from, '%') }),
      },
      working,
      sources,
      parts: partsOf(priced, own, judged),
      ...(least !== own && { remedy: { message: remedyInWords(own, rivals, joints) } }),
      notes: ['Tooling and set-up are spread over the boards of one year.'],
    }
  },
})

interface PricedProcess {
  readonly row: ProcessCost
  readonly process: ProcessCost['process']
  /** Of one board. */
  readonly total: Amount
  /** The figures without which it is not known. */
  readonly open: readonly string[]
}

const names = (some: readonly PricedProcess[]): string => some.map(({ process }) => process).join(' and ')

/** Nothing is the least while a figure is missing: whose, and which. */
function withFiguresOpen(own: PricedProcess, priced: readonly PricedProcess[], limit: string): Judged {
  const open = priced.filter((one) => one.open.length > 0)
  const missing = open.map((one) => `${one.open.join(', ')} of ${one.process}`)
  const found = `What a board costs by ${names(open)} is not known, so nothing is called the least.`
  return {
    ...undetermined(found, missing, limit),
    measured: { chosen: own.process, open: missing },
    parts: partsOf(priced, own, 'undetermined'),
  }
}

/** Those not chosen are shown to compare with. */
const partsOf = (priced: readonly PricedProcess[], own: PricedProcess, verdict: Verdict): Part[] =>
  priced.map((one) => ({
    subject: one.process,
    verdict: one === own ? verdict : 'not applicable',
    measured: measuredCost(one.total),
    found: isKnown(one.total)
      ? `${amountInWords(one.total)} a board`
      : `not known without ${one.open.join(', ')}`,
  }))

/** One figure, both ends of a range, or that it is not known. */
function measuredCost(amount: Amount): Measured {
  if (!isKnown(amount)) return { costKnown: false }
  return amount.from === amount.to
    ? { cost: measure(amount.from, 'currency') }
    : { costFrom: measure(amount.from, 'currency'), costTo: measure(amount.to, 'currency') }
}

/** How much dearer it is than the cheapest of the others, in percent: from the least it can be to the most. */
function excessOver(own: Amount, others: readonly Amount[]): Range {
  if (!isKnown(own)) return { from: 0, to: Infinity }
  const known = others.filter(isKnown)
  return {
    from: Math.max(0, ...known.map((other) => percentOver(own.from, other.to))),
    to: Math.max(0, ...known.map((other) => percentOver(own.to, other.from))),
  }
}

const percentOver = (cost: number, other: number): number => (cost > other ? (cost / other - 1) * 100 : 0)

function comparison(own: PricedProcess, rivals: readonly PricedProcess[], excess: Range): string {
  if (rivals.length === 1 && rivals[0] === own) return 'the least of those considered'
  if (rivals.includes(own))
    return `and which costs least cannot be told: the ranges of ${names(rivals)} overlap`
  const overlap = rivals.length > 1 ? ', whose ranges overlap' : ''
  if (!Number.isFinite(excess.from)) return `and ${names(rivals)} is given as costing nothing`
  return Number.isFinite(excess.to)
    ? `${percentInWords(excess)} more than ${names(rivals)}${overlap}`
    : `at least ${formatQuantity(excess.from, '%', 3)} more than ${names(rivals)}${overlap}`
}

const percentInWords = ({ from, to }: Range): string =>
  from === to ? formatQuantity(to, '%', 3) : `${formatNumber(from, 3)} to ${formatQuantity(to, '%', 3)}`

function remedyInWords(own: PricedProcess, rivals: readonly PricedProcess[], joints: number): string {
  const chosen = own.process
  if (rivals.includes(own))
    return `Narrow the ranges of ${names(rivals)}, or say in the option study why ${chosen} is worth more.`
  const [cheapest] = rivals
  const boards = rivals.length === 1 && cheapest ? boardsToSave(own.row, cheapest.row, joints) : undefined
  return boards === undefined
    ? `Choose ${rivals.map(({ process }) => process).join(' or ')}, or say in the option study why ${chosen} is worth more.`
    : `Choose ${names(rivals)} below ${formatQuantity(Math.ceil(boards), 'boards', 6)}; from there ${chosen} costs less.`
}

/** From how many boards the dearer outlay is saved; undefined where it never is, or the figures are ranges. */
function boardsToSave(chosen: ProcessCost, cheapest: ProcessCost, joints: number): number | undefined {
  const outlay = lessAmount(amountOf(chosen.fixed), amountOf(cheapest.fixed))
  const saving = lessAmount(costOfBoard(cheapest, joints, 1).running, costOfBoard(chosen, joints, 1).running)
  return isExact(outlay) && isExact(saving) && outlay.from > 0 && saving.from > 0
    ? breakEvenQuantity(outlay.from, saving.from)
    : undefined
}

function workingOf(row: ProcessCost, joints: number, volume: number): WorkingLine[] {
  const { rework, total } = costOfBoard(row, joints, volume)
  const typed = (stored: StoredAmount): string => amountInWords(amountOf(stored), 6)
  return [
    {
      label: `${row.process}, a board`,
      formula: 'fixed/boards + board + joints · joint + n·p·(D·rework + (1 − D)·P·field repair)',
      numbers: `${typed(row.fixed)}/${volume} + ${typed(row.perBoard)} + ${joints} · ${typed(row.perJoint)} + ${amountInWords(rework.here, 3)} + ${amountInWords(rework.inService, 3)}`,
      result: amountInWords(total),
    },
  ]
}
