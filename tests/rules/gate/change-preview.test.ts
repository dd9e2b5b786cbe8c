import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changePreview } from '@/shared/gate/change-preview'
import { lapsedByParameter } from '@/shared/gate/lapsed-signatures'
import { judgeProgramme } from '@/shared/gate/judgement'
import { STAGES } from '@/shared/plan/stage'
import { coat, signedUpTo, width } from './small-programme'

const signed = signedUpTo('control')
const judged = judgeProgramme(signed)
const preview = (value: number, parameter = coat.key) => changePreview(signed, judged, parameter, value)

describe('a change preview', () => {
  test('starts from a programme with three gates open, or it would show nothing', () => {
    expect(judged.gates.map(({ status }) => status)).toEqual(['open', 'open', 'open', 'ready'])
  })

  test('tells the finding that turns, with what it would find and what would mend it', () => {
    expect(preview(3).turned).toEqual([
      {
        rule: 'test-coat-least',
        title: 'Coat thick enough',
        before: 'meets',
        after: 'fails',
        found: 'The coat is 3 µm.',
        remedy: 'Order 5 µm.',
      },
    ])
  })

  test('tells a finding apart that keeps its verdict and says another number', () => {
    const { turned, moved } = preview(6)
    expect(turned).toEqual([])
    expect(moved.map(({ found }) => found)).toEqual(['The coat is 6 µm.', 'It may lie 12 months.'])
  })

  test('names the approvals of every item that rests on the value, wherever it stands, and no other', () => {
    const names = preview(6).approvals.map(({ itemKey, department }) => `${itemKey} ${department}`)
    expect(names).toEqual(['finish design', 'finish quality', 'store design', 'store quality'])
  })

  test('reopens the gates from the first stage that is touched, and undoes their signatures', () => {
    expect(preview(6).gates).toEqual(['specification', 'evaluation', 'control'])
    expect(preview(6).gateSignatures).toHaveLength(9)
  })

  test('of the value as it is says nothing at all', () => {
    expect(preview(8)).toEqual({
      turned: [],
      moved: [],
      approvals: [],
      revived: [],
      gateSignatures: [],
      gates: [],
    })
  })

  test('of the earlier value tells the approvals that would hold again', () => {
    const changed = {
      ...signed,
      facts: { ...signed.facts, values: new Map([...signed.facts.values, [coat.key, 9]]) },
    }
    const { revived, approvals } = changePreview(changed, judgeProgramme(changed), coat.key, 8)
    expect(revived.map(({ itemKey }) => itemKey)).toEqual(['finish', 'finish', 'store', 'store'])
    expect(approvals).toEqual([])
  })

  test('does not count the approvals of an item that is set aside', () => {
    const by = { byId: 'q', byName: 'Q', at: '2026-02-02T08:00:00.000Z' }
    const aside = {
      reason: 'Not here.',
      proposedById: 'd',
      proposedByName: 'D',
      proposedAt: by.at,
      agreed: by,
    }
    const state = {
      ...signed,
      items: signed.items.map((item) =>
        item.definition.key === 'store' ? { ...item, tailoredOut: aside } : item,
      ),
    }
    const { approvals } = changePreview(state, judgeProgramme(state), coat.key, 6)
    expect(approvals.map(({ itemKey }) => itemKey)).toEqual(['finish', 'finish'])
  })
})

describe('the reach of a change', () => {
  test('is what the preview of any other value undoes', () => {
    const anyPlace = fc.record({
      signedTo: fc.constantFrom(...STAGES),
      parameter: fc.constantFrom(coat.key, width.key),
      value: fc.integer({ min: 0, max: 50 }),
    })
    fc.assert(
      fc.property(anyPlace, ({ signedTo, parameter, value }) => {
        const state = signedUpTo(signedTo)
        fc.pre(state.facts.values.get(parameter) !== value)
        const judgement = judgeProgramme(state)
        const { approvals, gateSignatures, gates } = changePreview(state, judgement, parameter, value)
        expect(lapsedByParameter(parameter, judgement)).toEqual({ approvals, gateSignatures, gates })
      }),
      { numRuns: 60 },
    )
  })
  test('of a value nothing is signed on is empty', () => {
    expect(lapsedByParameter('nobody-reads-this', judged)).toEqual({
      approvals: [],
      gateSignatures: [],
      gates: [],
    })
  })
})
