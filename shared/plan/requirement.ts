import type { Unit } from '@/shared/quantity/unit'
import type { Source } from '@/shared/sources/source'
import type { Department } from './department'
import type { LessonRef } from './lesson-ref'

/** Where a limit may come from, highest authority first. */
export const AUTHORITIES = ['customer', 'standard', 'company', 'common practice'] as const
export type Authority = (typeof AUTHORITIES)[number]

/** The departments that may state a programme's own layer on a limit. */
export const STATES_LIMITS = ['design', 'quality'] as const satisfies readonly Department[]

/**
 * A limit that rules judge against. Its default stands until a programme's
 * requirement layers rule otherwise.
 */
export interface Limit {
  readonly source: 'limit'
  readonly key: string
  readonly label: string
  readonly unit: Unit
  /** `at most`: smaller is stricter. `at least`: larger is stricter. */
  readonly direction: 'at most' | 'at least'
  readonly byDefault: { readonly value: number; readonly authority: Authority; readonly from: Source }
  /** The values that it can have, where its unit says too little of that: see `limitRange`. */
  readonly within?: LimitRange
}

/** The values that a limit can have at all, both ends included; in the limit's unit. */
export interface LimitRange {
  readonly min: number
  readonly max: number
}

/** A programme's own layer on a limit, as one document states it. */
export interface Requirement {
  readonly id: string
  readonly limit: string
  readonly authority: Authority
  readonly document: string
  readonly clause: string
  readonly value: number
  /** The document expressly permits the looser value against the layers below it. */
  readonly relaxes: boolean
  readonly reason: string
  /** The lesson that brought it when the programme was opened; null where the programme stated it itself. */
  readonly lesson: LessonRef | null
  /** The company rule that was taken over with it, where one was. */
  readonly companyRule?: string
}

/** A demand on a limit, as one document states it: a requirement before anybody has laid it. */
export type StatedLimit = Pick<
  Requirement,
  'limit' | 'authority' | 'document' | 'clause' | 'value' | 'relaxes'
>

/** As much of a requirement as decides which layer rules. */
export type Demand = Omit<Requirement, 'reason'>

/** The layers on one limit, and which of them rules. */
export interface GoverningRequirement {
  readonly limit: Limit
  readonly value: number
  readonly authority: Authority
  readonly document: string
  /** Whether the default rules or a layer that the programme states. */
  readonly kind: Layer['kind']
  /** The governing value is looser than the default. */
  readonly relaxed: boolean
  /** Every layer, the default included, highest authority first. */
  readonly layers: readonly Layer[]
  /** Two layers of the same authority disagree. */
  readonly conflict: boolean
}

interface LayerTerms {
  readonly authority: Authority
  readonly document: string
  readonly value: number
  readonly relaxes: boolean
  readonly rules: boolean
}
/** What a limit starts with, from the source it names. */
interface DefaultLayer extends LayerTerms {
  readonly kind: 'default'
}
/** What the programme states, or a lesson or a company rule brought into it. */
interface StatedLayer extends LayerTerms {
  readonly kind: 'stated'
  /** The requirement's id. */
  readonly id: string
  readonly clause: string
  readonly lesson: LessonRef | null
  readonly companyRule?: string
}
export type Layer = DefaultLayer | StatedLayer

export const limit = (definition: Omit<Limit, 'source'>): Limit => ({ source: 'limit', ...definition })

/**
 * Which layer rules: the strictest of all, except that a layer which expressly
 * relaxes sets aside every layer of lower authority first.
 */
export function governingRequirement(
  definition: Limit,
  requirements: readonly Demand[],
): GoverningRequirement {
  const own = requirements.filter((requirement) => requirement.limit === definition.key)
  const layers = [...own.map(statedLayer), defaultLayer(definition)].sort(
    (a, b) => rank(a.authority) - rank(b.authority),
  )

  const relaxing = layers.find((layer) => layer.relaxes)
  const inForce = relaxing
    ? layers.filter((layer) => rank(layer.authority) <= rank(relaxing.authority))
    : layers
  const governing = inForce.reduce((strictest, layer) =>
    isStricter(definition, layer.value, strictest.value) ? layer : strictest,
  )
  return {
    limit: definition,
    value: governing.value,
    authority: governing.authority,
    document: governing.document,
    kind: governing.kind,
    relaxed: isStricter(definition, definition.byDefault.value, governing.value),
    layers: layers.map((layer) => ({ ...layer, rules: layer === governing })),
    conflict: layers.some((a) =>
      layers.some((b) => a !== b && a.authority === b.authority && a.value !== b.value),
    ),
  }
}

/** True when `value` is strictly tighter than `other` for this limit. */
export const isStricter = (definition: Limit, value: number, other: number): boolean =>
  definition.direction === 'at most' ? value < other : value > other

const rank = (authority: Authority): number => AUTHORITIES.indexOf(authority)

const statedLayer = ({
  id,
  authority,
  document,
  clause,
  value,
  relaxes,
  lesson,
  companyRule,
}: Demand): Omit<StatedLayer, 'rules'> => ({
  kind: 'stated',
  id,
  authority,
  document,
  clause,
  value,
  relaxes,
  lesson,
  ...(companyRule !== undefined && { companyRule }),
})

const defaultLayer = ({ byDefault }: Limit): Omit<DefaultLayer, 'rules'> => ({
  kind: 'default',
  authority: byDefault.authority,
  document: byDefault.from.cite,
  value: byDefault.value,
  relaxes: false,
})

export const isStatedLayer = (layer: Layer): layer is StatedLayer => layer.kind === 'stated'

/** Whether the programme states this limit itself: more than the default stands behind it. */
export const isStated = ({ layers }: Pick<GoverningRequirement, 'layers'>): boolean =>
  layers.some(isStatedLayer)
