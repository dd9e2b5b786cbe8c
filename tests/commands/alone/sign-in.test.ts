import { randomUUID } from 'node:crypto'
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest'
import { checkPassword, type Checked } from '@/lib/auth/check-password'
import { hashPassword } from '@/lib/auth/password'
import { verifySignature } from '@/lib/auth/signature'
import { admitTry, signInCounts, sweepCounts } from '@/lib/auth/throttle'
import type { Visitor } from '@/lib/auth/visitor'
import { database } from '@/lib/db/client'
import { openWorld, PASSWORD, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  vi.stubEnv('LOG_LEVEL', 'silent')
  db = await freshDatabase()
  world = await openWorld()
  // What is tested here is what passwords cost.
  await database().person.updateMany({ data: { passwordHash: await hashPassword(PASSWORD) } })
})
afterAll(() => db.drop())
afterAll(() => vi.unstubAllEnvs())
afterEach(() => vi.restoreAllMocks())

const HOUR_MS = 60 * 60 * 1000
const NOW = new Date('2026-03-02T08:00:00Z')
const later = (ms: number) => new Date(NOW.getTime() + ms)

/** Every story has addresses of its own (RFC 2544 keeps 198.18.0.0/15 for tests). */
let origins = 0
const somewhere = (): Visitor => {
  const address = `198.18.${origins >> 8}.${origins++ & 255}`
  return { address, origin: address, userAgent: '' }
}
const emailOf = async (who: keyof World['person']) =>
  (await database().person.findUniqueOrThrow({ where: { id: world.person[who] } })).email

const tryAs = (email: string, password: string, from: Visitor, at = NOW) =>
  checkPassword({ email, password }, from, at)

async function failTimes(times: number, email: string, from: Visitor, at = NOW): Promise<void> {
  for (let count = 0; count < times; count++)
    expect(await tryAs(email, `wrong ${count}`, from, at)).toMatchObject({ ok: false })
}

const wasRefusedUnseen = (checked: Checked) => !checked.ok && checked.retryAfterS !== undefined

describe('a flood', { timeout: 120_000 }, () => {
  const flood = (times: number, from: () => Visitor) =>
    Promise.all(
      Array.from({ length: times }, (_, index) =>
        tryAs(`flood-${index}@test.invalid`, 'some password', from()).then((checked) => ({
          checked,
          atMs: performance.now(),
        })),
      ),
    )

  test('of sixty sign-ins takes the memory of two hashes; what finds no place is refused at once', async () => {
    const before = process.memoryUsage().rss
    let max = before
    const watch = setInterval(() => (max = Math.max(max, process.memoryUsage().rss)), 5)
    const began = performance.now()
    const answers = await flood(60, somewhere)
    clearInterval(watch)
    const refused = answers.filter(({ checked }) => wasRefusedUnseen(checked))
    const checked = answers.filter((answer) => !refused.includes(answer))
    expect([checked.length, refused.length]).toEqual([22, 38])
    expect(checked.map((answer) => answer.checked)).toEqual(
      Array(22).fill({ ok: false, message: 'The address or the password is not right.' }),
    )
    // The first hash of all takes longer than it takes to refuse 38.
    const firstChecked = Math.min(...checked.map(({ atMs }) => atMs))
    expect(Math.max(...refused.map(({ atMs }) => atMs))).toBeLessThan(firstChecked)
    expect(firstChecked).toBeGreaterThan(began)
    // scrypt at N = 2^17, r = 8 takes 128 * N * r bytes (RFC 7914, section 2); the rest is the test itself.
    const hashBytes = 128 * 2 ** 17 * 8
    expect(max - before).toBeLessThan(2 * hashBytes + 100 * 2 ** 20)
  })

  test('from one origin leaves places for others', async () => {
    const one = somewhere()
    const flooded = flood(60, () => one)
    expect(await tryAs(await emailOf('lead'), PASSWORD, somewhere())).toMatchObject({ ok: true })
    const answers = await flooded
    expect(answers.filter(({ checked }) => !wasRefusedUnseen(checked))).toHaveLength(10)
  })

  test('keeps nobody from signing, who goes first', async () => {
    const flooded = flood(60, somewhere)
    await verifySignature(world.person.quality, { password: PASSWORD })
    const signedAtMs = performance.now()
    const answers = await flooded
    const before = answers.filter(
      ({ checked, atMs }) => !wasRefusedUnseen(checked) && atMs < signedAtMs,
    ).length
    // The two that were being looked at, and what a scheduler may make of two side by side.
    expect(before).toBeLessThanOrEqual(4)
  })
})

describe('wrong passwords', () => {
  test('slow the origin down that they came from, and nobody who is elsewhere', async () => {
    const attacker = somewhere()
    const email = await emailOf('design')
    await failTimes(5, email, attacker)
    expect(await tryAs(email, PASSWORD, attacker)).toEqual({
      ok: false,
      message: expect.stringContaining('Wait 30 seconds'),
      retryAfterS: 30,
    })
    expect(await tryAs(email, PASSWORD, somewhere())).toMatchObject({ ok: true })
  })

  test('are forgotten with time, and by the right one', async () => {
    const person = somewhere()
    const email = await emailOf('production')
    await failTimes(5, email, person)
    expect(await tryAs(email, PASSWORD, person, later(29_000))).toMatchObject({ retryAfterS: 1 })
    expect(await tryAs(email, PASSWORD, person, later(30_000))).toMatchObject({ ok: true })
    await failTimes(4, email, person, later(31_000))
    await failTimes(3, email, person, later(12 * HOUR_MS))
    expect(await tryAs(email, PASSWORD, person, later(12 * HOUR_MS))).toMatchObject({ ok: true })
  })

  test('for one account after the other slow the origin down, but not who entered from there before', async () => {
    const office = somewhere()
    const email = await emailOf('quality')
    expect(await tryAs(email, PASSWORD, office)).toMatchObject({ ok: true })
    // Failures as they are counted, without the half minute that so many hashes take.
    for (let count = 0; count < 31; count++)
      await admitTry(signInCounts(`spray-${count}@test.invalid`, office.origin), NOW)
    expect(await tryAs('spray-31@test.invalid', 'wrong', office)).toMatchObject({ retryAfterS: 5 })
    expect(await tryAs(await emailOf('auditor'), PASSWORD, office)).toMatchObject({ retryAfterS: 5 })
    expect(await tryAs(email, PASSWORD, office)).toMatchObject({ ok: true })
    // Entering an account of one's own opens the way for no more tries at others.
    expect(await tryAs('spray-32@test.invalid', 'wrong', office)).toMatchObject({ retryAfterS: 5 })
  })

  test('when signing slow the session down that they were typed in, and no other', async () => {
    const sign = (password: string, sessionId: string) =>
      verifySignature(world.person.secondDesign, { password, sessionId }, { now: NOW })
    const stolen = randomUUID()
    for (let count = 0; count < 5; count++)
      await expect(sign('wrong', stolen)).rejects.toThrow('Nothing was signed')
    await expect(sign(PASSWORD, stolen)).rejects.toThrow('Try again in 30 seconds')
    await expect(sign(PASSWORD, randomUUID())).resolves.toBeUndefined()
  })

  test('say what was not done only where something was to be signed', async () => {
    const refused = (purpose: 'sign' | 'change password') =>
      verifySignature(world.person.secondDesign, { password: 'wrong', sessionId: randomUUID() }, { purpose })
    await expect(refused('sign')).rejects.toThrow(/^The password is not right\. Nothing was signed\.$/)
    await expect(refused('change password')).rejects.toThrow(/^The password is not right\.$/)
  })

  test('are not kept for ever', async () => {
    const counts = signInCounts('long-ago@test.invalid', somewhere().origin)
    await admitTry(counts, new Date('2020-01-01T00:00:00Z'))
    const old = { where: { lastFailure: { lt: new Date('2020-01-02T00:00:00Z') } } }
    expect(await database().signInThrottle.count(old)).toBe(2)
    await sweepCounts(new Date('2020-01-03T00:00:00Z'))
    expect(await database().signInThrottle.count(old)).toBe(0)
  })
})

describe('an address that is not known', () => {
  test.each(['nobody', 'disabled', 'without a password'])(
    'is answered as a wrong password is: %s',
    async (which) => {
      const email = `${which.replaceAll(' ', '-')}@test.invalid`
      if (which !== 'nobody')
        await database().person.create({
          data: {
            id: randomUUID(),
            email,
            name: which,
            passwordHash: which === 'disabled' ? await hashOf('lead') : null,
            disabledAt: which === 'disabled' ? NOW : null,
            createdAt: NOW,
          },
        })
      const answer = await tryAs(email, PASSWORD, somewhere())
      expect(answer).toEqual(await tryAs(await emailOf('lead'), 'wrong', somewhere()))
    },
  )

  test('takes as long, from the first on', async () => {
    const known = await emailOf('lead')
    const timeOf = async (email: string) => {
      const began = performance.now()
      await tryAs(email, 'a wrong password', somewhere())
      return performance.now() - began
    }
    const [unknownMs, knownMs]: [number[], number[]] = [[], []]
    for (let count = 0; count < 5; count++) {
      unknownMs.push(await timeOf(`nobody-${count}@test.invalid`))
      knownMs.push(await timeOf(known))
    }
    // The quickest of each, which whatever else the machine does holds up least. Without the hash it would be a
    // hundredth, with a hash made for it twice as long.
    const ratio = Math.min(...unknownMs) / Math.min(...knownMs)
    expect(ratio).toBeGreaterThan(0.6)
    expect(ratio).toBeLessThan(1.6)
  })

  const hashOf = async (who: keyof World['person']) =>
    (await database().person.findUniqueOrThrow({ where: { id: world.person[who] } })).passwordHash
})

describe('the log', () => {
  const linesOf = async (work: () => Promise<unknown>) => {
    vi.stubEnv('LOG_LEVEL', 'info')
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    await work()
    const text = written.mock.calls.map(([line]) => String(line)).join('')
    written.mockRestore()
    vi.stubEnv('LOG_LEVEL', 'silent')
    return {
      text,
      lines: text
        .split('\n')
        .filter(Boolean)
        .map((line) => JSON.parse(line) as object),
    }
  }

  test('says of each refusal why, from where and of whom, and nothing that was typed', async () => {
    const from = somewhere()
    const { text, lines } = await linesOf(async () => {
      await tryAs(await emailOf('lead'), 'a secret of mine', from)
      await tryAs('a-password-in-the-wrong-field', 'a secret of mine', from)
    })
    const event = { level: 'warn', event: 'sign-in-refused', from: from.address }
    expect(lines).toEqual([
      expect.objectContaining({ ...event, reason: 'not right', personId: world.person.lead }),
      expect.objectContaining({ ...event, reason: 'unknown address' }),
    ])
    expect(text).not.toMatch(/secret of mine|wrong-field/)
  })

  test('says when a signature’s password was refused', async () => {
    const { lines } = await linesOf(() =>
      verifySignature(world.person.lead, { password: 'a secret of mine' }).catch(() => undefined),
    )
    expect(lines).toEqual([expect.objectContaining({ event: 'proof-refused', personId: world.person.lead })])
  })
})
