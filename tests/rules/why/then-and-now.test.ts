import { describe, expect, test } from 'vitest'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { approvalThenAndNow, gateThenAndNow } from '@/shared/why/then-and-now'
import { coat, signedUpTo, width } from '@/tests/rules/gate/small-programme'

/* What is told of a signature is this project's own decision, with no source outside it. */

const signed = signedUpTo('specification')
const thinner: ProgrammeState = {
  ...signed,
  facts: {
    ...signed.facts,
    values: new Map([
      [coat.key, 3],
      [width.key, 1],
    ]),
  },
}

describe('what an approval covered', () => {
  const approval = signed.approvals.find(({ itemKey }) => itemKey === 'finish')!
  const covered = (state: ProgrammeState) =>
    approvalThenAndNow(
      approval,
      judgeProgramme(state).items.find(({ item }) => item.definition.key === 'finish')!,
    )

  test('is all as it was while nothing has changed', () => {
    expect(covered(signed).map(({ what, same }) => [what, same])).toEqual([
      ['What the item asks', true],
      ['Who approves it', true],
      ['test-coat', true],
      ['Evidence', true],
      ['Finding: test-coat-least', true],
    ])
  })
  test('shows what each was then and is now, and leads on', () => {
    const changed = covered(thinner).filter(({ same }) => !same)
    expect(changed).toMatchObject([
      { then: '8', now: '3', why: { kind: 'value', key: coat.key } },
      {
        then: 'meets, by version 1',
        now: 'fails, by version 1',
        how: ['meets → fails'],
        why: { kind: 'finding', key: 'test-coat-least' },
      },
    ])
  })
})

describe('what a gate’s signature covered', () => {
  test('is its items by their digests, each with the approval that covered the same', () => {
    const [signature] = signed.gateSignatures
    const covered = gateThenAndNow(signature!, signed, judgeProgramme(signed))
    expect(covered).toMatchObject([
      { what: 'finish', same: true, why: { kind: 'approval', key: 'finish quality' } },
      { what: 'conductors', same: true },
    ])
    expect(gateThenAndNow(signature!, thinner, judgeProgramme(thinner)).map(({ same }) => same)).toEqual([
      false,
      true,
    ])
  })
  test('is the gate before as well', () => {
    const further = signedUpTo('evaluation')
    const signature = further.gateSignatures.find(({ stage }) => stage === 'evaluation')!
    expect(gateThenAndNow(signature, further, judgeProgramme(further))[0]).toMatchObject({
      what: 'Specification gate',
      same: true,
    })
  })
})
