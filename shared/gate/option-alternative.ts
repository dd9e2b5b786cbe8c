import type { CostLine } from '@/shared/cost/cost-line'
import type { StatedLimit } from '@/shared/plan/requirement'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** One way a choice can be made: values of any items, limits it would state, and what it costs. */
export interface AlternativeContent {
  readonly name: string
  readonly note: string
  /** What it would specify, by parameter; a parameter not named here stays as it is. */
  readonly values: Readonly<Record<string, JsonValue>>
  /** Limits that the programme would state with it. */
  readonly limits: readonly StatedLimit[]
  /** The study's own figures; an answer's amount of the same kind takes the place of one. */
  readonly costs: readonly CostLine[]
  /** Defects to expect with it; null for those its process is said to have. */
  readonly defectsPerMillion: number | null
  /** Numbers of the answered actions it rests on, beside those asked within the study. */
  readonly actions: readonly number[]
}

/** Who did something to an alternative, when and why. */
export interface Deed {
  readonly byId: string
  readonly byName: string
  readonly at: string
  readonly why: string
}

export interface OptionAlternative extends AlternativeContent {
  /** Whether the amounts of answers count for it. Those of an earlier version say all they cost themselves. */
  readonly drawsOnAnswers: boolean
  /** Null where the study was opened with it. */
  readonly added: Deed | null
  readonly changed: readonly Deed[]
  readonly withdrawn: Deed | null
}

/** An alternative of an earlier version: of one item, with two figures of its own. */
export interface FirstAlternative {
  readonly name: string
  readonly note: string
  readonly values: Readonly<Record<string, JsonValue>>
  readonly costPerBoard: number
  readonly costOnce: number
  readonly defectsPerMillion?: number | null
  readonly actions?: readonly number[]
}

/** An alternative as it was stored, whichever version stored it. */
export function alternativeOf(stored: OptionAlternative | FirstAlternative): OptionAlternative {
  if ('costs' in stored) return stored
  const { name, note, values, costPerBoard, costOnce, defectsPerMillion = null, actions = [] } = stored
  return {
    name,
    note,
    values,
    limits: [],
    costs: [
      { kind: 'piece', per: 'board', amount: costPerBoard },
      { kind: 'tooling', per: 'once', amount: costOnce },
    ],
    defectsPerMillion,
    actions,
    drawsOnAnswers: false,
    ...UNTOUCHED,
  }
}

const UNTOUCHED = { added: null, changed: [], withdrawn: null } as const

/** An alternative that a study is opened with. */
export const openedWith = (content: AlternativeContent): OptionAlternative => ({
  ...content,
  drawsOnAnswers: true,
  ...UNTOUCHED,
})

/** An alternative without what was done to it. */
export const contentOf = ({
  name,
  note,
  values,
  limits,
  costs,
  defectsPerMillion,
  actions,
}: OptionAlternative): AlternativeContent => ({
  name,
  note,
  values,
  limits,
  costs,
  defectsPerMillion,
  actions,
})
