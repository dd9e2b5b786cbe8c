import { chmod, rename, writeFile } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { contentPath } from '@/lib/evidence/evidence-paths'
import { installedStore } from '@/lib/evidence/installed-store'
import { bundleText } from '@/lib/exports/trail-bundle'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { verifyTrail } from '@/shared/trail/verify'
import { gateSeals, type TrailBundle } from '@/shared/trail/bundle'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { Attacker } from '@/tests/commands/attacker'
import { attachFile } from '@/tests/commands/every-command-once'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, trailLength, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

let db: FreshInstallation
let world: World
let id: string
let readingTrails: string[]
let file: string
let attacker: Attacker
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
  id = (await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })).id
  await world.must('design', 'sign-gate', await VALID_INPUT['sign-gate'](world, 'design'))
  await world.must('quality', 'approve-item', await VALID_INPUT['approve-item'](world, 'quality'))
  await world.must('production', 'add-readings', await VALID_INPUT['add-readings'](world, 'production'))
  await world.must('quality', 'test-lot', await VALID_INPUT['test-lot'](world, 'quality'))
  readingTrails = (await db.client.readingBatch.findMany()).map(({ trailId }) => trailId)
  file = await attachFile(world, 'A certificate.')
  attacker = await Attacker.enter()
})
afterAll(async () => {
  await attacker.leave()
  await db.drop()
})

/** What is told of the programme's trail, and of those of the machine and the supplier whose readings it rests on. */
const sentences = async (): Promise<readonly string[]> => {
  const told: string[] = []
  for (const trailId of [id, ...readingTrails])
    told.push(...breaksInWords(await verdictOnStored(trailId), 50))
  return told
}

/** Does something to the tables, says what the verification then says, and undoes it. */
async function after(attack: string, undo: string): Promise<readonly string[]> {
  await attacker.pastTheTrigger(attack)
  const found = await sentences()
  await attacker.pastTheTrigger(undo)
  expect(await sentences()).toEqual([])
  return found
}

/** Changes rows, keeping what they were. */
async function afterUpdate(table: string, set: string, where = 'true'): Promise<readonly string[]> {
  await attacker.rows(`DROP TABLE IF EXISTS pg_temp.before`)
  await attacker.rows(`CREATE TEMP TABLE before AS SELECT * FROM "${table}" WHERE ${where}`)
  return after(
    `UPDATE "${table}" SET ${set} WHERE ${where}`,
    `DELETE FROM "${table}" WHERE "id" IN (SELECT "id" FROM pg_temp.before); INSERT INTO "${table}" SELECT * FROM pg_temp.before`,
  )
}

test('what nobody touched is whole', async () => {
  expect(await sentences()).toEqual([])
})

describe('the end of the chain', () => {
  test('cut off while the head still knows it: told with both numbers', async () => {
    const length = await trailLength(world.code)
    await attacker.rows(
      'CREATE TEMP TABLE tail AS SELECT * FROM "TrailEntry" WHERE "trailId" = $1 AND "seq" > $2',
      [id, length - 3],
    )
    const found = await after(
      `DELETE FROM "TrailEntry" WHERE "trailId" = '${id}' AND "seq" > ${length - 3}`,
      `INSERT INTO "TrailEntry" SELECT * FROM pg_temp.tail`,
    )
    expect(found[0]).toMatch(
      new RegExp(
        `^The trail says it ends at entry ${length} \\(hash [0-9a-f]{12}…\\), but the newest entry kept is ${length - 3}\\.$`,
      ),
    )
  })

  test('cut off, and the head set back with it: what the lost entries wrote has no entry any more', async () => {
    const length = await trailLength(world.code)
    await attacker.rows(
      'CREATE TEMP TABLE tail2 AS SELECT * FROM "TrailEntry" WHERE "trailId" = $1 AND "seq" = $2',
      [id, length],
    )
    const back = (seq: number) =>
      `UPDATE "Trail" SET "seq" = ${seq}, "headHash" = (SELECT "hash" FROM "TrailEntry" WHERE "trailId" = '${id}' AND "seq" = ${seq}) WHERE "id" = '${id}'`
    const found = await after(
      `DELETE FROM "TrailEntry" WHERE "trailId" = '${id}' AND "seq" = ${length}; ${back(length - 1)}`,
      `INSERT INTO "TrailEntry" SELECT * FROM pg_temp.tail2; ${back(length)}`,
    )
    expect(found).toEqual([expect.stringMatching(/^The evidence .* is stored, but no entry made it\.$/)])
  })

  test('a head that says another hash, or fewer entries', async () => {
    const length = await trailLength(world.code)
    const { headHash } = await db.client.trail.findUniqueOrThrow({ where: { id } })
    expect(
      await after(
        `UPDATE "Trail" SET "headHash" = repeat('0', 64) WHERE "id" = '${id}'`,
        `UPDATE "Trail" SET "headHash" = '${headHash}' WHERE "id" = '${id}'`,
      ),
    ).toEqual([
      expect.stringContaining(`ends at entry ${length} (hash 000000000000…), but that entry’s hash is`),
    ])
    expect(
      await after(
        `UPDATE "Trail" SET "seq" = 3 WHERE "id" = '${id}'`,
        `UPDATE "Trail" SET "seq" = ${length} WHERE "id" = '${id}'`,
      ),
    ).toEqual([expect.stringContaining(`ends at entry 3`)])
  })
})

describe('what the entries wrote', () => {
  test('an approval under another name, on another day', async () => {
    const [first, ...more] = await afterUpdate(
      'Approval',
      `"personName" = 'Somebody Else', "at" = "at" - interval '30 days'`,
    )
    expect(more).toEqual([])
    expect(first).toMatch(
      /^The approval \(item “own-\d+”, department “quality”\) was changed after entry \d+: /,
    )
    expect(first).toContain('person name was recorded as “Test quality” and is stored as “Somebody Else”')
  })

  test('a gate’s signature under another name, and over another digest', async () => {
    const found = await afterUpdate(
      'GateSignature',
      `"personName" = 'Somebody Else', "digest" = repeat('a', 64)`,
    )
    expect(found).toEqual([
      expect.stringMatching(
        /^The signature of a gate \(stage “specification”, department “design”\) was changed/,
      ),
    ])
  })

  test('one stored reading, of a log and of a lot’s test', async () => {
    expect(
      await afterUpdate(
        'ReadingBatch',
        `"readings" = '{"count":1,"columns":{"at":[1767859200000],"bathC":[249]}}'`,
        `"logId" IS NOT NULL`,
      ),
    ).toEqual([expect.stringMatching(/^The batch of readings .* readings is not what was recorded/)])
    expect(
      await afterUpdate(
        'ReadingBatch',
        `"readings" = replace("readings"::text, '1.1', '1.2')::json`,
        `"lotTestId" IS NOT NULL`,
      ),
    ).toEqual([expect.stringMatching(/^The batch of readings .* was changed/)])
  })

  test('a member beside the readings, and readings that are none', async () => {
    const besides = `"readings" = (left("readings"::text, -1) || ',"more":1}')::json`
    expect(await afterUpdate('ReadingBatch', besides, `"logId" IS NOT NULL`)).toHaveLength(1)
    for (const none of ['[1]', '7', '{}', '{"count":1,"columns":null}'])
      expect(
        await afterUpdate('ReadingBatch', `"readings" = '${none}'`, `"logId" IS NOT NULL`),
        none,
      ).toHaveLength(1)
  })

  test('a number that no record can hold, a time without end', async () => {
    expect(await afterUpdate('Approval', `"at" = 'infinity'`)).toHaveLength(1)
  })

  test('evidence that is taken away', async () => {
    await attacker.rows(`CREATE TEMP TABLE evidence AS SELECT * FROM "Evidence" WHERE "sha256" IS NOT NULL`)
    const found = await after(
      `DELETE FROM "Evidence" WHERE "sha256" IS NOT NULL`,
      `INSERT INTO "Evidence" SELECT * FROM pg_temp.evidence`,
    )
    expect(found).toEqual([
      expect.stringMatching(
        /^The evidence .*“certificate.txt”.*, written by entry \d+, is not there any more\.$/,
      ),
    ])
  })
})

describe('the bytes of evidence', () => {
  const path = async (): Promise<string> => contentPath((await installedStore()).folder, file)

  test('a file that is gone', async () => {
    const at = await path()
    await rename(at, `${at}.away`)
    const found = await sentences()
    await rename(`${at}.away`, at)
    expect(found).toEqual([
      expect.stringMatching(new RegExp(`^The file ${file.slice(0, 12)}…, named by entry \\d+, is missing`)),
    ])
  })

  test('other bytes, of the same length', async () => {
    const at = await path()
    await chmod(at, 0o600)
    await writeFile(at, 'A certificatE.')
    const found = await sentences()
    await writeFile(at, 'A certificate.')
    expect(found).toEqual([expect.stringContaining('its bytes give another hash')])
    expect(await sentences()).toEqual([])
  })

  test('the register of files gives another kind, another size, or has no row', async () => {
    const undo = `DELETE FROM "StoredFile"; INSERT INTO "StoredFile" SELECT * FROM pg_temp.register`
    await attacker.rows(`CREATE TEMP TABLE register AS SELECT * FROM "StoredFile"`)
    expect(await after(`UPDATE "StoredFile" SET "mediaType" = 'text/html'`, undo)).toEqual([
      expect.stringMatching(/^The register of files is at odds .*media type was recorded as “text\/plain/),
    ])
    expect(await after(`UPDATE "StoredFile" SET "size" = 1`, undo)).toHaveLength(1)
    expect(await after(`DELETE FROM "StoredFile"`, undo)).toHaveLength(1)
  })
})

test('while people work, a verification sees no break, and a bundle ends where it began', async () => {
  const work = Array.from({ length: 12 }, async () =>
    world.must('production', 'add-readings', await VALID_INPUT['add-readings'](world, 'production')),
  )
  const verdicts = await Promise.all(Array.from({ length: 6 }, () => verdictOnStored(id)))
  let text = ''
  for await (const piece of bundleText({ id, code: world.code, title: 'A board' }, 'now')) text += piece
  await Promise.all(work)
  for (const verdict of verdicts) expect(breaksInWords(verdict, 5)).toEqual([])
  const { entries, gates } = JSON.parse(text) as TrailBundle
  expect(verifyTrail(entries, nativeSha256, gateSeals(gates)).breaks).toEqual([])
  expect(gates).toHaveLength(1)
})
