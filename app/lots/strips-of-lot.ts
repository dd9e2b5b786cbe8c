import { DRAWN, type DrawnReadings } from '@/app/lots/readings-drawn'
import { kindOf } from '@/shared/columns/column-kinds'
import { conditionOf } from '@/shared/lot-tests/condition-differences'
import { whyNotCounted } from '@/shared/lot-tests/counted-tests'
import { conditionInWords, conditionsFor, type StatedCondition } from '@/shared/lot-tests/stated-conditions'
import { TEST_METHODS, type TestMethodKey } from '@/shared/methods/test-methods'
import type { TestMethod } from '@/shared/methods/test-method'
import { ownMember } from '@/shared/own-member'
import type { Unit } from '@/shared/quantity/unit'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { samplingSpecified } from '@/shared/sampling/sampling-of-lot'

/** Readings of one lot on a strip, in the strip's unit. */
export interface StripReadings {
  readonly lot: Lot
  readonly counted: readonly number[]
  /** Of tests that do not count, such as under other conditions than the specified ones. */
  readonly setAside: readonly number[]
}

/** What one method found on a lot, over what it found on the lots of the same supplier and part before. */
export interface LotStrip {
  readonly title: string
  readonly characteristic: string
  readonly unit: Unit
  readonly limits: DrawnReadings['limits']
  readonly from: DrawnReadings['from']
  /** What the readings prove of the rest; only of a single test, whose specimens are one sample. */
  readonly bound: DrawnReadings['bound']
  readonly own: StripReadings
  /** Oldest first. */
  readonly earlier: readonly StripReadings[]
}

/** Tests that share a strip: by one method, under one stated condition, of one deposit. */
interface Alike {
  readonly method: TestMethod & { readonly key: TestMethodKey }
  readonly condition: StatedCondition | undefined
  readonly deposit: LotTest['conditions'][string]
}

/** A strip for each method, condition and place at which the lot was measured; its limits are those of the facts. */
export function stripsOfLot(lot: Lot, earlier: readonly Lot[], facts: Facts): LotStrip[] {
  const inputs = samplingSpecified(facts)
  const alikeOf = (of: Lot, test: LotTest): Alike | undefined => {
    const method = ownMember(TEST_METHODS, test.method)
    if (!method || !DRAWN[method.key]) return undefined
    const condition = inputs && conditionOf(of, test, inputs)
    return { method, condition, deposit: test.conditions['deposit'] }
  }
  const counts = (of: Lot, test: LotTest): boolean =>
    inputs === undefined || whyNotCounted(of, test, inputs) === undefined
  const drawnOf = (of: Lot, alike: Alike): { test: LotTest; drawn: readonly DrawnReadings[] }[] =>
    of.tests.flatMap((test) => {
      const own = alikeOf(of, test)
      const drawn = own && isSame(own, alike) && DRAWN[alike.method.key]
      return drawn ? [{ test, drawn: drawn(test, of, alike.method.charted, facts) }] : []
    })
  const readingsOf = (of: Lot, alike: Alike, name: string): StripReadings => {
    const named = drawnOf(of, alike).flatMap(({ test, drawn }) =>
      drawn.filter((one) => one.name === name).map(({ values }) => ({ values, counted: counts(of, test) })),
    )
    const valuesOf = (counted: boolean) =>
      named.filter((one) => one.counted === counted).flatMap(({ values }) => values)
    return { lot: of, counted: valuesOf(true), setAside: valuesOf(false) }
  }

  return differing(lot.tests.flatMap((test) => alikeOf(lot, test) ?? [])).flatMap((alike) => {
    const column = TEST_METHODS[alike.method.key].columns
    const charted = (column as TestMethod['columns'])[alike.method.charted]
    if (charted?.kind !== 'number') return []
    const drawn = drawnOf(lot, alike).flatMap((one) => one.drawn)
    return [...new Set(drawn.map(({ name }) => name))].map((name) => {
      const same = drawn.filter((one) => one.name === name)
      const stated = conditionsFor(inputs?.conditions ?? [], alike.method.key, lot)
      return {
        title: [
          `${alike.method.label}: ${charted.label.toLowerCase()}`,
          depositInWords(alike),
          name.toLowerCase(),
          conditionInWords(alike.condition, stated),
        ]
          .filter(Boolean)
          .join(', '),
        characteristic: charted.label,
        unit: charted.unit,
        limits: same[0]?.limits ?? {},
        from: same[0]?.from,
        bound: same.length === 1 ? same[0]?.bound : undefined,
        own: readingsOf(lot, alike, name),
        earlier: earlier
          .map((before) => readingsOf(before, alike, name))
          .filter(({ counted, setAside }) => counted.length + setAside.length > 0),
      }
    })
  })
}

const isSame = (one: Alike, other: Alike): boolean =>
  one.method.key === other.method.key && one.condition === other.condition && one.deposit === other.deposit

const differing = (all: readonly Alike[]): Alike[] =>
  all.filter((one, at) => all.findIndex((other) => isSame(one, other)) === at)

function depositInWords({ method, deposit }: Alike): string {
  const column = method.conditions['deposit']
  return column && deposit !== undefined ? kindOf(column).inSentence(column, deposit) : ''
}
