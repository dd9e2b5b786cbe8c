import { isMoney, type AnsweredLine, type CostKind, type CostLine } from './cost-line'

/** An amount that counts for an alternative, and who named it. */
export interface DrawnLine extends CostLine {
  /** The number of the action whose answer names it; null where the study names it itself. */
  readonly action: number | null
}

/** Why a sum of an alternative is not known, as data. */
export type CostGap =
  | { readonly kind: 'unanswered'; readonly action: number }
  | { readonly kind: 'not known'; readonly cost: CostKind; readonly action: number | null }
  | { readonly kind: 'not named'; readonly cost: CostKind }
  | { readonly kind: 'nothing named' }

export interface DrawnCosts {
  readonly lines: readonly DrawnLine[]
  /** The study's own figures whose place an answer has taken. */
  readonly replaced: readonly CostLine[]
  readonly gaps: readonly CostGap[]
}

/** An action as far as an alternative's cost is drawn from it. */
export interface AskedCost {
  readonly number: number
  readonly kind: string
  readonly study: number | null
  readonly outcome: string | null
  readonly answer: { readonly amounts: readonly AnsweredLine[] } | null
}

/** What is said of an alternative's cost in its study. */
export interface CostedAlternative {
  readonly name: string
  readonly costs: readonly CostLine[]
  readonly actions: readonly number[]
  readonly drawsOnAnswers: boolean
}

/**
 * What each alternative of a study costs by what is said: its own figures, and
 * the amounts of the answers to what was asked within the study or is rested on.
 * An answer's amount takes the place of an own figure of the same kind. What one
 * alternative prices, every other must price too, or it is a gap: 0 is said, not
 * supposed. A question of cost that waits for its answer is a gap of them all.
 */
export function drawnCosts(
  study: number,
  alternatives: readonly CostedAlternative[],
  actions: readonly AskedCost[],
): DrawnCosts[] {
  const drawn = alternatives.map((alternative) => linesOf(study, alternative, actions))
  const kinds = [...new Set(drawn.flatMap(({ lines }) => lines.filter(isMoney).map(({ kind }) => kind)))]
  return drawn.map(({ lines, replaced, waiting }) => ({
    lines,
    replaced,
    gaps: [
      ...waiting.map((action): CostGap => ({ kind: 'unanswered', action })),
      ...lines
        .filter((line) => isMoney(line) && line.amount === null)
        .map(({ kind, action }): CostGap => ({ kind: 'not known', cost: kind, action })),
      ...(kinds.length === 0
        ? [{ kind: 'nothing named' } as const]
        : kinds
            .filter((kind) => !lines.some((line) => line.kind === kind))
            .map((cost): CostGap => ({ kind: 'not named', cost }))),
    ],
  }))
}

function linesOf(
  study: number,
  { name, costs, actions: cited, drawsOnAnswers }: CostedAlternative,
  actions: readonly AskedCost[],
) {
  const own = costs.map((line): DrawnLine => ({ ...line, action: null }))
  if (!drawsOnAnswers) return { lines: own, replaced: [], waiting: [] }
  const concerned = actions.filter(
    (action) => action.outcome !== 'withdrawn' && (action.study === study || cited.includes(action.number)),
  )
  const settled = concerned.filter(({ answer, outcome }) => answer && outcome !== 'returned')
  const answered = settled.flatMap(({ number, answer }) =>
    (answer?.amounts ?? [])
      .filter(({ alternative }) => alternative === null || alternative === name)
      .map(({ kind, per, amount }): DrawnLine => ({ kind, per, amount, action: number })),
  )
  const answers = (line: CostLine): boolean => answered.some(({ kind }) => kind === line.kind)
  return {
    lines: [...answered, ...own.filter((line) => !answers(line))],
    replaced: costs.filter(answers),
    waiting: concerned
      .filter((action) => action.kind === 'cost' && !settled.includes(action))
      .map(({ number }) => number),
  }
}
