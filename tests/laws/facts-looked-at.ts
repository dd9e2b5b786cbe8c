import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
} from '@/shared/plan/parameters/control-flux'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import {
  wettingBalanceAgreedBy,
  wettingBalanceCriteria,
} from '@/shared/plan/parameters/evaluation-wetting-balance'
import { insulationNeeded } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { demoState } from '../rules/demo/demo-state'
import { set } from '../rules/facts-builder'

const demo = demoState('lx-41').facts

/** The demo's board made and tested by the ways that the demo does not take. */
function otherWays({ values, records, ...rest }: Facts): Facts {
  const conditions = values.get(testConditions.key) as readonly { readonly method: string }[]
  const rise = { ...conditions.find(({ method }) => method === 'rotary-dip'), method: 'plated-hole-rise' }
  return {
    ...rest,
    values: new Map([
      ...values,
      [testConditions.key, [...conditions, rise]],
      set(fluxControlMethod, 'acid-number'),
      set(fluxAcidNumberTarget, 20),
      set(fluxAcidNumberTolerance, 2),
      set(wettingBalanceCriteria, 'set-a'),
      set(wettingBalanceAgreedBy, 'maker and user'),
      set(solderingProcess, 'reflow'),
      set(insulationNeeded, 100_000),
    ]),
    records: {
      ...records,
      lots: records.lots.map(testedOtherwise),
      byKind: new Map(records.byKind).set('field-return', RETURNS),
    },
  }
}

const RETURNS = Array.from({ length: 40 }, (_, index) => ({
  id: `return ${index}`,
  returnedOn: '2026-09-01',
  assembly: `A-${index}`,
  cause: 'solder-joint',
  jointsFailed: 1,
  cost: 100,
}))

/** A fifth of the force that the balance read. */
const weakly = (test: LotTest): LotTest => ({
  ...test,
  readings: {
    ...test.readings,
    columns: {
      ...test.readings.columns,
      forceMN: (test.readings.columns['forceMN'] ?? []).map((force) => Number(force) / 5),
    },
  },
})

function testedOtherwise(lot: Lot): Lot {
  const [first] = lot.tests
  if (lot.kind === 'component')
    return {
      ...lot,
      tests: lot.tests.map((test) => (test.method === 'wetting-balance' ? weakly(test) : test)),
    }
  if (lot.kind !== 'bare board' || !first) return lot
  const specimens = Array.from({ length: 20 }, (_, index) => `S${index + 1}`)
  const tested = (
    method: string,
    outcome: (index: number) => string,
    risePct: number,
    conditions = first.conditions,
  ): LotTest => ({
    ...first,
    id: `${lot.id} ${method}`,
    method,
    conditions,
    readings: {
      count: specimens.length,
      columns: {
        specimen: specimens,
        hole: specimens,
        outcome: specimens.map((_, index) => outcome(index)),
        risePct: specimens.map((_, index) => risePct - index),
      },
    },
  })
  return {
    ...lot,
    tests: [
      ...lot.tests,
      tested('plated-hole-rise', () => 'wetted', 60),
      tested('solder-float', (index) => (index % 3 === 0 ? 'measling' : 'sound'), 0, {
        bathTemperatureC: 288,
        floatS: 10,
      }),
      tested('receiving-check', (index) => (index % 3 === 0 ? 'not as ordered' : 'as ordered'), 0),
    ],
  }
}

/** What findings are looked at on: every rule finds something to judge in one of these. */
export const FACTS_LOOKED_AT: readonly Facts[] = [demo, demoState('px-12').facts, otherWays(demo)]
