import { execFile } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { gateSeals, trailBundle, type BundleGate, type TrailBundle } from '@/shared/trail/bundle'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { appendEntry, entryHash, type TrailEntry } from '@/shared/trail/entry'
import { trailRoot } from '@/shared/trail/merkle'
import type { Sha256 } from '@/shared/trail/sha256'
import { verifyTrail } from '@/shared/trail/verify'

const SCRIPT = 'scripts/verify-trail.mjs'
const sha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex')
const folder = mkdtempSync(join(tmpdir(), 'trail-bundle-'))
afterAll(() => rmSync(folder, { recursive: true }))

type Run = { code: number; out: string; err: string }

let files = 0
function check(content: string | Buffer, ...flags: string[]): Promise<Run> {
  const path = join(folder, `bundle-${(files += 1)}.json`)
  writeFileSync(path, content)
  return run(path, ...flags)
}

const run = (...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    execFile(process.execPath, [SCRIPT, ...args], (error, out, err) => {
      resolve({ code: error ? Number(error.code) : 0, out, err })
    })
  })

const PROGRAMME = { code: 'LX-41', title: 'Invented board' }
/** Stands in a list of payloads for an entry that signs the gate over all before it. */
const SIGNS = Symbol('signs the gate')
const AT = '2026-03-04T10:11:12.345Z'

/** A trail as every version has written it: opened by its first entry, each gate signed by one of its own. */
function trailOf(payloads: readonly (JsonValue | typeof SIGNS)[], at = AT): TrailEntry[] {
  const draft = { trailId: 't-1', at, actorId: 'p-1', actorName: 'Inès Moor' }
  const opens = { ...draft, command: 'open-programme', payload: { ...PROGRAMME, lead: 'Inès Moor' } }
  const entries = [appendEntry(undefined, opens, sha256)]
  for (const payload of payloads) {
    const { seq, headHash, merkleRoot } = gateOver(entries, entries.length)
    const said =
      payload === SIGNS
        ? {
            command: 'sign-gate',
            payload: { stage: 'specification', department: 'quality', trailSeq: seq, headHash, merkleRoot },
          }
        : { command: 'revise', payload }
    entries.push(appendEntry(entries.at(-1), { ...draft, ...said }, sha256))
  }
  return entries
}

function gateOver(entries: readonly TrailEntry[], seq: number): BundleGate {
  const hashes = entries.slice(0, seq).map(({ hash }) => hash)
  return {
    stage: 'specification (quality)',
    signedAt: AT,
    seq,
    headHash: hashes.at(-1) ?? '',
    merkleRoot: trailRoot(hashes, sha256),
  }
}

const whole = trailOf([
  'zwei',
  { b: [3, null], a: 1e-7 },
  SIGNS,
  { ü: '\ud83d\ude02', '\ufb33': '"' },
  [],
  SIGNS,
])
const bundle = trailBundle({
  exportedAt: '2026-03-06T09:00:00.000Z',
  programme: PROGRAMME,
  entries: whole,
  gates: [gateOver(whole, 3), gateOver(whole, 6)],
})
const withEntries = (entries: readonly TrailEntry[]): TrailBundle => ({ ...bundle, entries })
const at = (seq: number): TrailEntry => whole[seq - 1]!
const resealed = (entry: TrailEntry): TrailEntry => ({ ...entry, hash: entryHash(entry, sha256) })

test('a whole bundle: ends with 0, names the programme and the newest hash', async () => {
  const { code, out } = await check(JSON.stringify(bundle, null, 2))
  expect(code).toBe(0)
  expect(out).toContain('Programme LX-41, Invented board')
  expect(out).toContain('Entries: 7')
  expect(out.match(/over \d entries: agrees/g)).toHaveLength(2)
  expect(out).toContain(`Newest hash: ${at(7).hash} (entry 7)`)
  expect(out).toContain('Verdict: WHOLE')
})

describe('a broken bundle ends with 1 and agrees with the program on the first break', () => {
  const rewritten = trailOf(['zwei', 3, SIGNS, [], 6, SIGNS])
  test.each<[string, TrailBundle]>([
    ['altered payload', withEntries(whole.with(3, { ...at(4), payload: '{}' }))],
    ['altered name', withEntries(whole.with(0, { ...at(1), actorName: 'Someone' }))],
    ['altered and resealed', withEntries(whole.with(3, resealed({ ...at(4), actorName: 'Someone' })))],
    ['missing', withEntries(whole.toSpliced(1, 2))],
    ['beginning missing', withEntries(whole.slice(1))],
    ['swapped', withEntries(whole.with(1, at(3)).with(2, at(2)))],
    ['doubled', withEntries(whole.toSpliced(2, 0, at(2)))],
    ['wrong genesis', withEntries(whole.with(0, resealed({ ...at(1), previousHash: sha256('') })))],
    ['of another trail', withEntries(whole.with(6, resealed({ ...at(7), trailId: 't-2' })))],
    [
      'a time that does not exist',
      withEntries(whole.with(2, resealed({ ...at(3), at: '2026-02-30T10:11:12.345Z' }))),
    ],
    ['without a name', withEntries(whole.with(2, { ...at(3), actorName: null as unknown as string }))],
    ['end cut off before a gate', withEntries(whole.slice(0, 4))],
    ['written anew', withEntries(rewritten)],
    ['without entries', withEntries([])],
    [
      'a gate over another root',
      { ...bundle, gates: [gateOver(whole, 3), { ...gateOver(whole, 6), merkleRoot: sha256('') }] },
    ],
  ])('%s', async (_, broken) => {
    const verdict = verifyTrail(broken.entries, sha256, gateSeals(broken.gates))
    const { code, out } = await check(JSON.stringify(broken))
    expect(verdict.intact).toBe(false)
    expect(out).toContain(`Verdict: BROKEN, first at entry ${verdict.firstBreak!.seq}.`)
    expect(code).toBe(1)
  })
})

describe('a header that is not what the entries say is broken, though every entry is whole', () => {
  const [first, second] = bundle.gates as [BundleGate, BundleGate]
  test.each<[string, Partial<TrailBundle>, string]>([
    ['another code', { programme: { ...PROGRAMME, code: 'LX-42' } }, 'gives the code as "LX-42"'],
    ['another title', { programme: { ...PROGRAMME, title: 'Another board' } }, 'gives the title as'],
    ['a gate left out', { gates: [first] }, 'Entry 7 signs the gate specification (quality)'],
    ['a gate that nobody signed', { gates: [first, second, gateOver(whole, 5)] }, 'no entry signs like that'],
    ['a gate stated twice', { gates: [first, second, second] }, 'no entry signs like that'],
    [
      'another day',
      { gates: [first, { ...second, signedAt: '2026-03-01T08:00:00.000Z' }] },
      'no entry signs',
    ],
    [
      'another department',
      { gates: [first, { ...second, stage: 'specification (design)' }] },
      'no entry signs',
    ],
  ])('%s', async (_, changed, message) => {
    const { code, out } = await check(JSON.stringify({ ...bundle, ...changed }))
    expect(code).toBe(1)
    expect(out).toContain(message)
  })

  test('entries that open no programme bear out no name', async () => {
    const foreign = appendEntry(undefined, { ...at(1), command: 'revise', payload: 1 }, sha256)
    const { code, out } = await check(JSON.stringify({ ...bundle, entries: [foreign], gates: [] }))
    expect([code, out]).toEqual([1, expect.stringContaining('nothing bears out its name')])
  })
})

test('an installation’s own trail is opened by no entry: its name is fixed', async () => {
  const first = appendEntry(
    undefined,
    { ...at(1), trailId: 'installation', command: 'first-administrator', payload: {} },
    sha256,
  )
  const named = (title: string) => ({
    ...bundle,
    programme: { code: 'installation', title },
    entries: [first],
    gates: [],
  })
  expect((await check(JSON.stringify(named('People and instruments')))).code).toBe(0)
  expect((await check(JSON.stringify(named('Everything')))).code).toBe(1)
})

test('time that runs backwards is said, and is no break', async () => {
  const back = appendEntry(at(7), { ...at(7), at: '2026-03-03T10:11:12.345Z', payload: 8 }, sha256)
  const { code, out } = await check(
    JSON.stringify(withEntries([...whole, { ...back, ...resealed({ ...back, command: 'revise' }) }])),
  )
  expect(code).toBe(0)
  expect(out).toContain(
    `Time runs backwards: entry 8 says 2026-03-03T10:11:12.345Z, the one before it ${AT}.`,
  )
})

test('an end cut off behind the last gate shows only against a known hash', async () => {
  const longer = withEntries([
    ...whole,
    appendEntry(at(7), { ...at(7), command: 'revise', payload: 8 }, sha256),
  ])
  const cut = JSON.stringify(bundle)
  expect((await check(cut)).code).toBe(0)
  const { code, out } = await check(cut, '--known-hash', longer.entries.at(-1)!.hash)
  expect(code).toBe(1)
  expect(out).toContain('the end was cut off or the record rewritten')
  expect((await check(JSON.stringify(bundle), '--known-hash', at(5).hash)).out).toContain('it is entry 5')
})

test('a payload that is not in canonical form is refused even when its hash fits', async () => {
  const loose = resealed({ ...at(7), payload: '{"a":1,"a":2}' })
  expect((await check(JSON.stringify(withEntries(whole.with(6, loose))))).out).toContain(
    'Entry 7 was altered',
  )
})

describe('a file that cannot be checked ends with 2 and says why', () => {
  test.each<[string, string | Buffer, string]>([
    ['no JSON', 'not json', 'could not be read as JSON'],
    ['not UTF-8', Buffer.from('{"format":"\xe9"}', 'latin1'), 'UTF-8'],
    ['another format', '{"format":"other"}', 'not a trail bundle'],
    ['nothing', 'null', 'not a trail bundle'],
    ['a later version', JSON.stringify({ ...bundle, version: 2 }), 'version 2'],
    ['no entries', JSON.stringify({ ...bundle, entries: {} }), 'no list of entries'],
    ['no programme', JSON.stringify({ ...bundle, programme: null }), 'programme'],
  ])('%s', async (_, content, message) => {
    const { code, err } = await check(content)
    expect([code, err]).toEqual([2, expect.stringContaining(message)])
  })
  test('no file, two files, an unknown flag, a hash that is none', async () => {
    for (const args of [
      [],
      ['a', 'b'],
      ['--verbose', 'a'],
      ['--known-hash', 'abc', 'a'],
      [join(folder, 'none.json')],
    ]) {
      expect((await run(...args)).code, args.join(' ')).toBe(2)
    }
  })
})

test('what the file says cannot steer the terminal', async () => {
  const titled = { ...bundle, programme: { code: 'LX-41', title: 'a\u001b[2Jb\nVerdict: WHOLE' } }
  const { out } = await check(JSON.stringify(titled))
  expect(out).not.toContain('\u001b')
  expect(out.match(/^Verdict/gm)).toHaveLength(1)
})

test('a long trail reports its progress', async () => {
  const long = trailOf([0, SIGNS])
  const draft = { ...long[2]!, command: 'revise' }
  while (long.length < 40_001) long.push(appendEntry(long.at(-1), { ...draft, payload: long.length }, sha256))
  const { code, out, err } = await check(
    JSON.stringify({ ...bundle, entries: long, gates: [gateOver(long, 2)] }),
  )
  expect([code, err.match(/of 40001 entries checked/g)]).toEqual([
    0,
    ['of 40001 entries checked', 'of 40001 entries checked'],
  ])
  expect(out).toContain('Newest hash')
})

test('it needs nothing but Node', () => {
  const imports = [...readFileSync(SCRIPT, 'utf8').matchAll(/(?:from|import\(?|require\() *'([^']+)'/g)]
  expect(imports.map(([, name]) => name)).toEqual(['node:crypto', 'node:fs', 'node:util'])
})

test('its canonical form is the program’s', async () => {
  const values = trailOf([
    { z: [{ b: 1, a: { 10: 1, 9: 2 } }], '\ud83d\ude02': 1, '\ufb33': canonicalJson({ q: '"' }) },
  ])
  expect((await check(JSON.stringify({ ...bundle, entries: values, gates: [] }))).code).toBe(0)
})
