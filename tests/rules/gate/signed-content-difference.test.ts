import { describe, expect, test } from 'vitest'
import { signedContentDifference, type SignedContentShape } from '@/shared/gate/signed-content-difference'
import { radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { leadClearance } from '@/shared/rules/specification/lead-clearance'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

const SIGNED: SignedContentShape = {
  item: 'holes-and-lands',
  asks: { version: 1 },
  approvers: ['design', 'quality'],
  setAside: null,
  values: { [boardThickness.key]: 1.6 },
  limits: { [radialClearanceMax.key]: { value: 0.25, authority: 'common practice', by: 'default' } },
  evidence: [{ kind: 'drawing', sha256: 'a'.repeat(64), url: null }],
  findings: [{ rule: leadClearance.id, version: 1, verdict: 'meets', concession: null }],
}
const text = (signedContent: object): string => canonicalJson(signedContent as JsonValue)
const since = (change: Partial<SignedContentShape>) =>
  signedContentDifference(text(SIGNED), text({ ...SIGNED, ...change }))
const [finding] = SIGNED.findings

describe('what changed since a signature', () => {
  test('is nothing when nothing did', () => expect(since({})).toEqual([]))

  test('a value: from what to what, in its unit', () => {
    expect(since({ values: { [boardThickness.key]: 2.4 } })).toEqual([
      { kind: 'value', target: boardThickness.key, what: boardThickness.label, how: ['1.6 mm → 2.4 mm'] },
    ])
  })
  test('a value that was emptied', () => {
    expect(since({ values: { [boardThickness.key]: null } })[0]?.how).toEqual(['1.6 mm → nothing'])
  })
  test('a limit, with the document of either', () => {
    const limits = {
      [radialClearanceMax.key]: { value: 0.2, authority: 'customer', by: 'stated', document: 'CS-100' },
    } as const
    const { cite } = radialClearanceMax.byDefault.from
    expect(since({ limits })[0]?.how).toEqual([
      `0.25 mm by ${cite} (common practice) → 0.2 mm by CS-100 (customer)`,
    ])
  })
  test('evidence attached and withdrawn', () => {
    const evidence = [{ kind: 'photograph', sha256: null, url: 'https://example.invalid/a' }]
    expect(since({ evidence })[0]?.how).toEqual([
      'attached: photograph (https://example.invalid/a)',
      'withdrawn: drawing (aaaaaaaaaaaa)',
    ])
  })
  test.each([
    [{ verdict: 'fails' }, 'meets → fails'],
    [{ version: 2 }, 'by version 2 of the rule, before by 1'],
    [{ concession: 4 }, 'concession 4 lets it pass'],
  ])('a finding: %o', (change, message) => {
    expect(since({ findings: [{ ...finding!, ...change }] })).toEqual([
      {
        kind: 'finding',
        target: leadClearance.id,
        what: `the finding “${leadClearance.title}”`,
        how: [message],
      },
    ])
  })
  test('a rule that came and one that went', () => {
    const other = { ...finding!, rule: 'another-rule', verdict: 'marginal' }
    expect(since({ findings: [other] }).map(({ how }) => how)).toEqual([
      ['was not judged then; marginal now'],
      ['is not judged any more'],
    ])
  })
  test('the item itself, beside a value', () => {
    const both = since({ asks: { version: 2 }, values: { [boardThickness.key]: 2.4 } })
    expect(both.map(({ kind }) => kind)).toEqual(['value', 'item'])
    const added = signedContentDifference(
      text({ ...SIGNED, asks: { text: 'Is it warm?' } }),
      text({ ...SIGNED, asks: { text: 'Is it hot?' } }),
    )
    expect(added[0]?.how).toEqual(['asks: “Is it warm?” → “Is it hot?”'])
  })
})
