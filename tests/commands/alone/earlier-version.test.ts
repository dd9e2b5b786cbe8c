import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { carryConcessions } from '@/lib/programme/carry-concessions'
import { loadState } from '@/lib/programme/load-state'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { concessionStatus } from '@/shared/gate/concession'
import { itemStateFor, judgeProgramme } from '@/shared/gate/judgement'
import { governingRequirement } from '@/shared/plan/requirement'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { canonicalJson } from '@/shared/trail/canonical-json'
import type { Finding } from '@/shared/rules/finding'
import { Attacker } from '@/tests/commands/attacker'
import { earlierDatabase, PROGRAMME } from '@/tests/commands/earlier-version/earlier-database'
import { rewriteTrail } from '@/tests/commands/written-before'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/*
 * What people signed under version 0.1, whose covers held the program's words and whose concessions
 * held a digest of sentences, goes on holding under this one.
 */

let db: FreshInstallation
let id: string
let attacker: Attacker
beforeAll(async () => {
  db = await freshInstallation(earlierDatabase)
  id = (await db.client.programme.findUniqueOrThrow({ where: { code: PROGRAMME } })).id
  attacker = await Attacker.enter()
})
afterAll(async () => {
  await attacker.leave()
  await db.drop()
})

async function judged() {
  const state = await loadState(db.client, id, '2026-12-01')
  return { state, judgement: judgeProgramme(state) }
}

const breaks = async (): Promise<readonly string[]> => {
  const { intact, stored, chain } = await verdictOnStored(id)
  return breaksInWords({ intact, stored, chain }, 20)
}

const approvalsOf = async (item: string): Promise<readonly boolean[]> =>
  itemStateFor((await judged()).judgement, item)?.approvals.map(({ holds }) => holds) ?? []

async function statuses(): Promise<Readonly<Record<number, string>>> {
  const { state, judgement } = await judged()
  return Object.fromEntries(
    state.concessions.map((concession) => [
      concession.number,
      concessionStatus(concession, judgement.findings.get(concession.rule), state.facts),
    ]),
  )
}

describe('brought to today’s tables', () => {
  test('its record is whole', async () => {
    expect(await breaks()).toEqual([])
  })

  test('what its lessons brought names them as data, and reads as it was signed', async () => {
    const from = (number: number) => ({ programme: expect.stringMatching(/^T-/), number })
    const item = await db.client.planItem.findFirstOrThrow({ where: { programmeId: id, key: 'own-1' } })
    expect(item.lesson).toEqual({ ...from(1), inAsks: true })
    expect(item.added).toMatchObject({ asks: expect.stringContaining('(Learnt in T-21599BC0, lesson 1.)') })
    const limits = await db.client.requirement.findMany({ where: { programmeId: id } })
    const lessons = Object.fromEntries(limits.map(({ limit, lesson }) => [limit, lesson]))
    expect(lessons).toEqual({ 'contact-gold-least': from(2), 'contact-nickel-least': null })
  })

  test('a stated limit whose clause is called “default” is a stated one', async () => {
    const { state } = await judged()
    const { layers } = governingRequirement(findLimit('contact-nickel-least')!, state.facts.requirements)
    expect(layers.map(({ kind, value }) => [kind, value])).toEqual([
      ['stated', 4],
      ['default', expect.any(Number)],
    ])
  })

  test.each([
    ['programme-frame', 3],
    ['own-1', 2],
  ] as const)('the approvals of %s hold', async (item, count) => {
    expect(await approvalsOf(item)).toEqual(Array(count).fill(true))
  })
})

/*
 * Rules and sentences change with the years. The rest is about concessions that were asked for under
 * that version with the findings of today.
 */
describe('a concession asked for with the sentences that stand today', () => {
  beforeAll(async () => {
    const { judgement, state } = await judged()
    const today = (rule: string): Finding => judgement.findings.get(rule)!
    for (const { rule, findingDigest } of state.concessions)
      await replaceEverywhere(findingDigest, sentencesDigestThen(today(rule)))
    const signed = (version: number) => `"rule":"edge-contacts","verdict":"fails","version":${version}}`
    await replaceEverywhere(signed(1), signed(today('edge-contacts').version))
    await digestAgain()
  })

  test('waits until what it was asked for is known as data', async () => {
    expect(await breaks()).toEqual([])
    expect(await statuses()).toEqual({
      1: 'refused',
      2: 'no longer about this finding',
      3: 'no longer about this finding',
    })
    expect(await approvalsOf('interconnection')).toEqual([false, false])
  })

  test('is carried over at the start, and lets its finding pass as it did', async () => {
    expect(await carryConcessions(new Date('2026-12-01T08:00:00Z'))).toBe(2)
    expect(await statuses()).toEqual({ 1: 'refused', 2: 'granted', 3: 'asked' })
    expect(await approvalsOf('interconnection')).toEqual([true, true])
  })

  test('is told in the trail, signed by nobody, and the record is whole', async () => {
    const entry = await db.client.trailEntry.findFirstOrThrow({
      where: { trailId: id },
      orderBy: { seq: 'desc' },
    })
    expect(entry).toMatchObject({ command: 'carry-concessions', actorName: 'Liquidus' })
    const { concessions } = JSON.parse(entry.payload) as { concessions: readonly { concession: number }[] }
    expect(concessions.map(({ concession }) => concession)).toEqual([2, 3])
    expect(await breaks()).toEqual([])
  })

  test('is carried over once', async () => {
    expect(await carryConcessions()).toBe(0)
  })

  test('is not carried over where its finding is another by now', async () => {
    const row = { where: { programmeId_number: { programmeId: id, number: 2 } } }
    const { findingData, findingDigest } = await db.client.concession.findUniqueOrThrow(row)
    await db.client.concession.update({
      ...row,
      data: { findingData: null, findingDigest: nativeSha256('another finding') },
    })
    expect(await carryConcessions()).toBe(0)
    expect((await statuses())[2]).toBe('no longer about this finding')
    await db.client.concession.update({ ...row, data: { findingData, findingDigest } })
    expect(await breaks()).toEqual([])
  })
})

/** The digest of a finding as version 0.1 took it. */
const sentencesDigestThen = ({ rule, version, verdict, found, parts = [] }: Finding): string =>
  nativeSha256(
    canonicalJson({
      rule,
      version,
      verdict,
      found,
      parts: parts.filter((part) => part.verdict === 'fails').map((part) => [part.subject, part.found]),
    }),
  )

/** Puts another text where one stands in what was signed and in the entries that tell of it. */
async function replaceEverywhere(from: string, to: string): Promise<void> {
  if (from === to) return
  const columns = { Concession: ['findingDigest'], Approval: SIGNED, GateSignature: SIGNED }
  for (const [table, names] of Object.entries(columns))
    for (const name of names)
      await attacker.rows(`UPDATE "${table}" SET "${name}" = replace("${name}", $1, $2)`, [from, to])
  await rewriteTrail(
    attacker,
    id,
    (_, payload) => JSON.parse(canonicalJson(payload).replaceAll(from, to)) as typeof payload,
  )
}
const SIGNED = ['cover', 'digest']

/** Gives what was signed the digests of its texts, items before the gates that name them. */
async function digestAgain(): Promise<void> {
  for (const table of ['Approval', 'GateSignature'])
    for (const { cover, digest } of await attacker.rows<Signed>(
      `SELECT DISTINCT "cover", "digest" FROM "${table}"`,
    ))
      await replaceEverywhere(digest, nativeSha256(cover))
}
interface Signed {
  readonly cover: string
  readonly digest: string
}
