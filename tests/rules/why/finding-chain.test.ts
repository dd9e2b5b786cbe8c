import { expect, test } from 'vitest'
import { openedWith } from '@/shared/gate/option-alternative'
import { judgeProgramme } from '@/shared/gate/judgement'
import { findingChain } from '@/shared/why/finding-chain'
import type { Origins, RevisionOrigin } from '@/shared/why/origins'
import { recordedIn, type WhyStep } from '@/shared/why/step'
import { coat, signedUpTo } from '@/tests/rules/gate/small-programme'

/* What a chain holds is this project's own decision, with no source outside it. */

const state = signedUpTo('specification')
const AT = '2026-02-03T08:00:00.000Z'
const revision = (number: number, value: number, over: Partial<RevisionOrigin> = {}): RevisionOrigin => ({
  number,
  value,
  reason: `Why ${number}.`,
  author: 'Dora',
  at: AT,
  notice: null,
  ...over,
})
const NOTHING: Origins = {
  revisions: new Map(),
  requirements: new Map(),
  studies: [],
  notices: [],
  recorded: new Map(),
  batches: new Map(),
  corrections: new Map(),
}
const item = state.items.find(({ definition }) => definition.key === 'finish')!
const [rule] = item.definition.rules
const chain = (origins: Partial<Origins>): WhyStep[] =>
  findingChain(rule!, item, state, judgeProgramme(state), { ...NOTHING, ...origins })
const valueStep = (steps: readonly WhyStep[]) => steps.find(({ place }) => place?.kind === 'parameter')

test('begins with the rule, its formula and what it found, and ends with who approved over it', () => {
  const steps = chain({})
  expect(steps[0]).toMatchObject({ says: 'coat ≥ 5 µm', verdict: 'meets' })
  expect(steps[0]?.lines).toContain('The coat is 8 µm.')
  expect(steps.at(-1)).toMatchObject({
    says: 'covers the item as it stands',
    by: { name: 'Somebody of quality' },
    why: { kind: 'approval', key: 'finish quality' },
  })
})

test('leads from a value to its revision, what it replaced, and the study it came by', () => {
  const content = { note: '', limits: [], costs: [], defectsPerMillion: null, actions: [] }
  const study = {
    number: 2,
    itemKey: 'finish',
    title: 'How thick',
    alternatives: [
      openedWith({ ...content, name: 'Thick', values: { [coat.key]: 8 } }),
      openedWith({ ...content, name: 'Thin', values: { [coat.key]: 5 } }),
    ],
    openedBy: 'Dora',
    openedAt: AT,
    adoption: { name: 'Thick', why: 'It lasts.', by: 'Lea', at: AT },
  }
  const revisions = new Map([
    [coat.key, [revision(2, 8), revision(1, 6, { at: '2026-02-01T08:00:00.000Z' })]],
  ])
  const step = valueStep(chain({ revisions, studies: [study] }))
  expect(step).toMatchObject({ says: '8', by: { name: 'Dora', at: AT }, words: 'Why 2.' })
  expect(step?.lines?.[0]).toContain('6 → 8')
  expect(step?.rests?.map(({ what }) => what)).toEqual(['Study 2, How thick', 'Before: revision 1'])
  expect(recordedIn([step!])).toContainEqual({ at: AT, name: coat.key })
  // A study adopted at another moment brought something else.
  const other = { ...study, adoption: { ...study.adoption, at: '2026-02-09T08:00:00.000Z' } }
  expect(valueStep(chain({ revisions, studies: [other] }))?.rests?.map(({ what }) => what)).toEqual([
    'Before: revision 1',
  ])
})

test('says whose it is to specify what nobody has specified', () => {
  expect(valueStep(chain({}))?.says).toContain('not specified yet')
})
