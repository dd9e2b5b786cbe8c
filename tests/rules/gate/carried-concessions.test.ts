import { describe, expect, test } from 'vitest'
import { carriedConcessions, sentencesDigest } from '@/shared/gate/carried-concessions'
import { findingData } from '@/shared/gate/finding-data'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import type { Finding } from '@/shared/rules/finding'

const finding: Finding = {
  rule: 'edge-contacts',
  version: 3,
  verdict: 'fails',
  found: 'The bevel is 45°.',
  limit: '',
  working: [],
  sources: [],
  parts: [
    { subject: 'Edge A', verdict: 'fails', found: '0.3 µm of gold' },
    { subject: 'Edge B', verdict: 'meets', found: '0.9 µm of gold' },
    { subject: 'Edge C', verdict: 'undetermined', found: 'not measured' },
  ],
}
const { parts: _, ...alone } = finding

describe('the digest of a finding’s sentences', () => {
  // Written down from version 0.1, whose concessions hold them.
  test.each([
    ['with parts', finding, '29d841ca76ede2fd071551847056a6ded47154afd39bf1cfff9aeebae9749f59'],
    ['without', alone, '2f400ef215771c4ed7892d6a5bf8bfca5f4904f6ced833a387c8c2dab14e3996'],
  ])('is the one that was taken then, %s', (_name, found, digest) => {
    expect(sentencesDigest(found)).toBe(digest)
  })
})

const asked = (over: Partial<ConcessionEntry> = {}): ConcessionEntry => ({
  id: 'c',
  number: 1,
  itemKey: 'interconnection',
  rule: finding.rule,
  findingDigest: sentencesDigest(finding),
  findingData: null,
  permit: null,
  why: 'For a trial.',
  quantity: 1,
  untilOn: null,
  requestedById: 'p',
  requestedByName: 'A. Ward',
  requestedAt: '2026-02-01T08:00:00.000Z',
  design: null,
  quality: null,
  refused: null,
  ...over,
})

describe('a concession of version 0.1', () => {
  const carried = (concession: ConcessionEntry, today: readonly Finding[] = [finding]) =>
    carriedConcessions([concession], new Map(today.map((one) => [one.rule, one]))).map(
      (one) => one.findingData,
    )

  test('is carried over to what its finding found', () => {
    expect(carried(asked())).toEqual([findingData(finding)])
  })

  test.each<[string, Partial<ConcessionEntry>]>([
    ['was carried over before', { findingData: findingData(finding) }],
    ['was refused', { refused: { byId: 'q', byName: 'B. Ray', at: '2026-02-02T08:00:00.000Z', why: 'No.' } }],
    [
      'was asked for another finding',
      { findingDigest: sentencesDigest({ ...finding, found: 'The bevel is 44°.' }) },
    ],
  ])('is left when it %s', (_name, over) => {
    expect(carried(asked(over))).toEqual([])
  })

  test.each<[string, readonly Finding[]]>([
    ['is not judged any more', []],
    ['turned', [{ ...finding, verdict: 'meets' }]],
    ['is judged by another version', [{ ...finding, version: 4 }]],
    [
      'has another part failing',
      [{ ...finding, parts: finding.parts!.map((part) => ({ ...part, verdict: 'fails' })) }],
    ],
  ])('is left when its finding %s', (_name, today) => {
    expect(carried(asked(), today)).toEqual([])
  })
})
