import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { bundleText } from '@/lib/exports/trail-bundle'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import type { TrailBundle } from '@/shared/trail/bundle'
import { Attacker } from '@/tests/commands/attacker'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* A gate signed in a programme whose facts rest on a machine of the works: its entry names where that trail ended. */

const run = promisify(execFile)
const folder = mkdtempSync(join(tmpdir(), 'liquidus-bundle-'))
let db: FreshInstallation
let world: World
let programmeId: string
let machineId: string
let bundle: TrailBundle
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
  await world.must('production', 'open-line', { code: 'L1', name: 'A line' })
  await world.must('production', 'open-machine', { line: 'L1', code: 'Wave 1', kind: 'wave' })
  await world.must('production', 'state-line', { programme: world.code, line: 'L1' })
  const reading = await VALID_INPUT['add-readings'](world, 'production')
  await world.must('production', 'open-log', {
    machine: 'Wave 1',
    code: 'BATH-1',
    characteristic: 'bath-temperature',
    instrument: null,
  })
  await world.must('production', 'add-readings', { ...reading, machine: 'Wave 1', log: 'BATH-1' })
  await world.must('design', 'sign-gate', await VALID_INPUT['sign-gate'](world, 'design'))
  // What comes after the signature is none of its business.
  await world.must('production', 'add-readings', { ...reading, machine: 'Wave 1', log: 'BATH-1' })
  programmeId = (await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })).id
  machineId = (await db.client.machine.findUniqueOrThrow({ where: { code: 'Wave 1' } })).id
  let text = ''
  for await (const piece of bundleText(
    { id: programmeId, code: world.code, title: 'A board for tests' },
    '2026-12-01T08:00:00.000Z',
  ))
    text += piece
  bundle = JSON.parse(text) as TrailBundle
})
afterAll(async () => {
  rmSync(folder, { recursive: true })
  await db.drop()
})

async function verified(file: TrailBundle): Promise<{ code: number; out: string }> {
  const path = join(folder, 'bundle.json')
  writeFileSync(path, JSON.stringify(file))
  try {
    const { stdout } = await run('node', ['scripts/verify-trail.mjs', path])
    return { code: 0, out: stdout }
  } catch (error) {
    const { code, stdout } = error as { code: number; stdout: string }
    return { code, out: stdout }
  }
}

describe('the exported bundle', () => {
  test('carries the machine’s trail up to the signature, and the standalone verifier finds it whole', async () => {
    expect(bundle.works).toMatchObject([{ kind: 'machine', code: 'Wave 1' }])
    expect(bundle.works?.[0]?.entries.map(({ command }) => command)).toEqual([
      'open-machine',
      'open-log',
      'add-readings',
    ])
    const { code, out } = await verified(bundle)
    expect(out).toContain('Of the works, machine Wave 1: 3 entries')
    expect(code).toBe(0)
  })

  test('without that trail, or with it cut short, is broken at the entry that signs', async () => {
    const signs = bundle.entries.find(({ command }) => command === 'sign-gate')?.seq
    for (const works of [[], bundle.works!.map((one) => ({ ...one, entries: one.entries.slice(0, 2) }))]) {
      const { code, out } = await verified({ ...bundle, works })
      expect(code).toBe(1)
      expect(out).toContain(`Entry ${signs} signs over entry 3 of machine Wave 1`)
    }
  })

  test('with an entry of the machine altered is broken', async () => {
    const [one] = bundle.works!
    const entries = one!.entries.map((entry, index) =>
      index === 2 ? { ...entry, payload: entry.payload.replace('BATH-1', 'BATH-2') } : entry,
    )
    const { code, out } = await verified({ ...bundle, works: [{ ...one!, entries }] })
    expect(code).toBe(1)
    expect(out).toContain('Of the works, machine Wave 1: Entry 3 was altered')
  })

  test('of the machine itself is whole under its own name', async () => {
    let text = ''
    for await (const piece of bundleText(
      { id: machineId, code: 'Wave 1', title: 'Machine' },
      '2026-12-01T08:00:00.000Z',
    ))
      text += piece
    expect((await verified(JSON.parse(text) as TrailBundle)).code).toBe(0)
  })
})

test('a machine’s trail written anew is told in the programme that was signed over it', async () => {
  expect(breaksInWords(await verdictOnStored(programmeId), 10)).toEqual([])
  const attacker = await Attacker.enter()
  const [before] = await attacker.rows<{ hash: string }>(
    'SELECT "hash" FROM "TrailEntry" WHERE "trailId" = $1 AND "seq" = 3',
    [machineId],
  )
  const rewrite = async (hash: string) => {
    await attacker.rows('ALTER TABLE "TrailEntry" DISABLE TRIGGER USER')
    await attacker.rows('UPDATE "TrailEntry" SET "hash" = $2 WHERE "trailId" = $1 AND "seq" = 3', [
      machineId,
      hash,
    ])
    await attacker.rows('ALTER TABLE "TrailEntry" ENABLE TRIGGER USER')
  }
  await rewrite('f'.repeat(64))
  expect(breaksInWords(await verdictOnStored(programmeId), 10)).toEqual([
    expect.stringMatching(
      /^Entry \d+ signs over entry 3 of machine Wave 1, which that trail does not hold any more\.$/,
    ),
  ])
  await rewrite(before?.hash ?? '')
  await attacker.leave()
  expect(breaksInWords(await verdictOnStored(programmeId), 10)).toEqual([])
})
