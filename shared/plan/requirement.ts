import type { Unit } from '@/shared/quantity/unit'
import type { Source } from '@/shared/sources/source'

/** Where a limit may come from, highest authority first. */
export const AUTHORITIES = ['customer', 'standard', 'company', 'common practice'] as const
export type Authority = (typeof AUTHORITIES)[number]

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
}

/** The layers on one limit, and which of them rules. */
export interface Ruling {
  readonly limit: Limit
  readonly value: number
  readonly authority: Authority
  readonly document: string
  /** The ruling value is looser than the default. */
  readonly relaxed: boolean
  /** Every layer, the default included, highest authority first. */
  readonly layers: readonly Layer[]
  /** Two layers of the same authority disagree. */
  readonly conflict: boolean
}
export interface Layer {
  readonly authority: Authority
  readonly document: string
  readonly clause: string
  readonly value: number
  readonly relaxes: boolean
  readonly rules: boolean
}

export const limit = (definition: Omit<Limit, 'source'>): Limit => ({ source: 'limit', ...definition })

/**
 * Which layer rules: the strictest of all, except that a layer which expressly
 * relaxes sets aside every layer of lower authority first.
 */
export function rulingOn(definition: Limit, requirements: readonly Requirement[]): Ruling {
  const own = requirements.filter((requirement) => requirement.limit === definition.key)
  const layers: Omit<Layer, 'rules'>[] = [
    ...own.map(({ authority, document, clause, value, relaxes }) => ({
      authority,
      document,
      clause,
      value,
      relaxes,
    })),
    { ...byDefaultLayer(definition) },
  ].sort((a, b) => rank(a.authority) - rank(b.authority))

  const relaxing = layers.find((layer) => layer.relaxes)
  const inForce = relaxing
    ? layers.filter((layer) => rank(layer.authority) <= rank(relaxing.authority))
    : layers
  const ruling = inForce.reduce((strictest, layer) =>
    isStricter(definition, layer.value, strictest.value) ? layer : strictest,
  )
  return {
    limit: definition,
    value: ruling.value,
    authority: ruling.authority,
    document: ruling.document,
    relaxed: isStricter(definition, definition.byDefault.value, ruling.value),
    layers: layers.map((layer) => ({ ...layer, rules: layer === ruling })),
    conflict: layers.some((a) =>
      layers.some((b) => a !== b && a.authority === b.authority && a.value !== b.value),
    ),
  }
}

/** True when `value` is strictly tighter than `other` for this limit. */
export const isStricter = (definition: Limit, value: number, other: number): boolean =>
  definition.direction === 'at most' ? value < other : value > other

const rank = (authority: Authority): number => AUTHORITIES.indexOf(authority)

const byDefaultLayer = ({ byDefault }: Limit): Omit<Layer, 'rules'> => ({
  authority: byDefault.authority,
  document: byDefault.from.cite,
  clause: 'default',
  value: byDefault.value,
  relaxes: false,
})

/** Whether the programme states this limit itself: more than the default stands behind it. */
export const isStated = ({ layers }: Pick<Ruling, 'layers'>): boolean => layers.length > 1
