import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemHolding, rulesReading, ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import { lapsedByParameter, type LapsedSignatures } from '@/shared/gate/lapsed-signatures'
import type { Unit } from '@/shared/quantity/unit'
import { readableOf } from '@/shared/rules/rule'

/** A specified number that can be tried out on the map. */
export interface ValueToTry {
  readonly key: string
  readonly label: string
  readonly item: string
  readonly unit: Unit
  readonly whole: boolean
  readonly min: number
  readonly max: number
  /** As it stands. */
  readonly value: number
  /** Signatures that any other value would undo. */
  readonly reach: LapsedSignatures
}

/** The specified numbers that a check reads which looks at no records, so that the browser can judge it. */
export function valuesToTry({ state, judgement }: ProgrammeView): ValueToTry[] {
  return ALL_PARAMETERS.flatMap(({ key, label, shape }) => {
    const value = state.facts.values.get(key)
    const column = shape.kind === 'field' ? shape.column : undefined
    const item = itemHolding.parameter(key)
    if (column?.kind !== 'number' || typeof value !== 'number' || !item || !isJudgedLive(key)) return []
    const { unit, min, max, whole } = column
    const reach = lapsedByParameter(key, judgement)
    return [{ key, label, item: item.key, unit, whole, min, max, value, reach }]
  })
}

const isJudgedLive = (key: string): boolean =>
  rulesReading(key).some(({ reads }) =>
    Object.values(reads).every((read) => readableOf(read).source !== 'records'),
  )
