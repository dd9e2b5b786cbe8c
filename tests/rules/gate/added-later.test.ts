import { expect, test } from 'vitest'
import { conductorsAndSpacingsItem } from '@/shared/catalogue/conductors-and-spacings'
import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { emptyParameters, signedContentOf } from '@/shared/gate/signed-content'
import { netClasses, type NetClass } from '@/shared/plan/parameters/net-classes'
import { signedUpTo } from './small-programme'

/* A parameter that came into an item after programmes had agreed it must not undo what they signed. */

const item = { definition: conductorsAndSpacingsItem, added: false, tailoredOut: null, lesson: null }
const before = {
  ...item,
  definition: {
    ...conductorsAndSpacingsItem,
    parameters: conductorsAndSpacingsItem.parameters.filter(({ key }) => key !== netClasses.key),
  },
}
const state = signedUpTo('specification')
const stating = (rows: readonly NetClass[]) => ({
  ...state,
  facts: { ...state.facts, values: new Map([...state.facts.values, [netClasses.key, rows]]) },
})
const row: NetClass = {
  nets: 'VIN',
  voltageV: 24,
  alternates: undefined,
  currentA: undefined,
  dropMostMv: undefined,
}

test('while it is empty, the item is signed as it was before it came, to the letter', () => {
  expect(signedContentOf(item, state, new Map())).toBe(signedContentOf(before, state, new Map()))
})

test('once it has a value, that is signed with the rest', () => {
  const signed = signedContentOf(item, stating([row]), new Map())
  expect(signed).not.toBe(signedContentOf(item, state, new Map()))
  expect(signed).not.toBe(signedContentOf(item, stating([{ ...row, voltageV: 48 }]), new Map()))
  expect((JSON.parse(signed) as { values: object }).values).toHaveProperty(netClasses.key)
})

test('it may stay empty', () => {
  expect(mayStayEmpty(netClasses)).toBe(true)
  expect(emptyParameters(item, state).map(({ key }) => key)).not.toContain(netClasses.key)
})
