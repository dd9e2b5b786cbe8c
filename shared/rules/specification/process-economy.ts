import { costOfBoard } from '@/shared/cost/cost-of-board'
import { computed } from '@/shared/sources/provenance'
import { boardJoints } from '@/shared/plan/board-joints'
import { processExcessMax } from '@/shared/plan/limits/soldering-process'
import { processExcessGuard } from '@/shared/plan/limits/specification-guards'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { isStated } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Part, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { breakEvenQuantity } from '@/shared/cost/break-even'
import { measure } from '@/shared/rules/measure'

export const processEconomy = rule({
  id: 'process-economy',
  title: 'Economy of the process',
  why: 'A cheap process with many defects costs more than a dear one with few, once rework and field repair are counted; how many boards are made decides where the line lies.',
  formula:
    '(cost of the chosen − least cost)/least cost ≤ most; cost = fixed/boards + board + joints · joint + rework + field repair',
  stage: 'specification',
  version: 3,
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
    const cost = (row: ProcessCost): number => costOfBoard(row, joints, volume).total
    const cheapest = costs.reduce((min, row) => (cost(row) < cost(min) ? row : min))
    const excess = cheapest === chosen ? 0 : (cost(chosen) / cost(cheapest) - 1) * 100
    const margin = {
      found: excess,
      limit: max.value,
      unit: '%',
      direction: 'at most',
      guardBand: (guard.value / 100) * max.value,
    } as const
    const verdict = verdictOn(margin)
    // Nothing is so many percent of nothing: beside a process that costs nothing no margin can be told.
    const isComparable = Number.isFinite(excess)
    const comparison =
      cheapest === chosen
        ? 'the least of those considered'
        : isComparable
          ? `${formatQuantity(excess, '%', 3)} more than ${cheapest.process}`
          : `and ${cheapest.process} is given as costing nothing`
    // A dearer process may be right for the joints: economy alone never fails a design.
    const judged = verdict === 'fails' ? 'marginal' : verdict
    return {
      verdict: judged,
      found: `${chosen.process} costs ${formatQuantity(cost(chosen), 'currency')} a board, ${comparison}.`,
      limit,
      ...(isComparable && { margin }),
      measured: {
        chosen: chosen.process,
        cost: measure(cost(chosen), 'currency'),
        cheapest: cheapest.process,
      },
      working: costs.flatMap((row) => workingOf(row, joints, volume)),
      sources,
      parts: costs.map((row): Part => ({
        subject: row.process,
        // Those not chosen are shown to compare with.
        verdict: row === chosen ? judged : 'not applicable',
        measured: { cost: measure(cost(row), 'currency') },
        found: `${formatQuantity(cost(row), 'currency')} a board`,
      })),
      ...(cheapest !== chosen && {
        remedy: { message: remedyInWords(chosen, cheapest, joints) },
      }),
      notes: ['Tooling and set-up are spread over the boards of one year.'],
    }
  },
})

function remedyInWords(chosen: ProcessCost, cheapest: ProcessCost, joints: number): string {
  const saving = costOfBoard(cheapest, joints, 1).running - costOfBoard(chosen, joints, 1).running
  const boards =
    chosen.fixed > cheapest.fixed && saving > 0
      ? breakEvenQuantity(chosen.fixed - cheapest.fixed, saving)
      : undefined
  return boards === undefined
    ? `Choose ${cheapest.process}, or say in the option study why ${chosen.process} is worth more.`
    : `Choose ${cheapest.process} below ${formatQuantity(Math.ceil(boards), 'boards', 6)}; from there ${chosen.process} costs less.`
}

function workingOf(row: ProcessCost, joints: number, volume: number): WorkingLine[] {
  const { rework, total } = costOfBoard(row, joints, volume)
  return [
    {
      label: `${row.process}, a board`,
      formula: 'fixed/boards + board + joints · joint + n·p·(D·rework + (1 − D)·P·field repair)',
      numbers: `${row.fixed}/${volume} + ${row.perBoard} + ${joints} · ${row.perJoint} + ${formatQuantity(rework.here, 'currency', 3)} + ${formatQuantity(rework.inService, 'currency', 3)}`,
      result: formatQuantity(total, 'currency'),
    },
  ]
}
