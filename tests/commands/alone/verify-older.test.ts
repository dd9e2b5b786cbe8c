import { execFileSync } from 'node:child_process'
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { bundleText } from '@/lib/exports/trail-bundle'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { coveredTable } from '@/shared/stored/covered-tables'
import { Attacker } from '@/tests/commands/attacker'
import { everyCommandOnce } from '@/tests/commands/every-command-once'
import type { World } from '@/tests/commands/world'
import { asWrittenBefore } from '@/tests/commands/written-before'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* A programme whose entries were written by the first versions, which said less of what they wrote. */

let db: FreshInstallation
let world: World
let id: string
let attacker: Attacker
beforeAll(async () => {
  db = await freshInstallation()
  world = await everyCommandOnce()
  id = (await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })).id
  attacker = await Attacker.enter()
  await asWrittenBefore(attacker, id)
})
afterAll(async () => {
  await attacker.leave()
  await db.drop()
})

const sentences = async (): Promise<readonly string[]> => breaksInWords(await verdictOnStored(id), 50)

test('it is whole, and says how many rows could not be compared in full', async () => {
  const { intact, stored, chain } = await verdictOnStored(id)
  expect(breaksInWords({ intact, stored, chain }, 20)).toEqual([])
  const [{ added, brought, takenUp } = { added: 0, brought: 0, takenUp: 0 }] = await attacker.rows<
    Record<'added' | 'brought' | 'takenUp', number>
  >(
    `SELECT (SELECT count(*) FROM "TrailEntry" AS entry JOIN "Programme" AS programme ON programme."id"::text = entry."trailId"
              WHERE programme."id" = $1 AND entry."command" = 'take-up-item')::int AS "takenUp",
            (SELECT count(*) FROM "PlanItem" WHERE "programmeId" = $1 AND "added" IS NOT NULL)::int AS added,
            (SELECT count(*) FROM "Requirement" WHERE "programmeId" = $1 AND "document" = 'Lessons learnt')::int AS brought`,
    [id],
  )
  expect([added > 1, brought]).toEqual([true, 1])
  // Places in the plan but of what was taken up later, who accepted a lesson: all else could be compared.
  expect(stored.unhashedRows).toBe(STANDARD_PLAN.length - takenUp + added + brought)
})

test.each([
  ['an approval’s name', 'Approval', `"personName" = 'Somebody Else'`],
  ['an approval’s day', 'Approval', `"at" = "at" - interval '1 day'`],
  ['a gate’s digest', 'GateSignature', `"digest" = repeat('a', 64)`],
  ['a limit that a lesson brought', 'Requirement', `"value" = "value" + 1`],
  ['what an item was set aside for', 'PlanItem', `"setAside" = '{"reason":"none"}'`],
] as const)('%s is told all the same', async (_, table, set) => {
  const { owner = '' } = coveredTable(table)
  await attacker.rows(`CREATE TEMP TABLE kept AS SELECT * FROM "${table}" WHERE "${owner}" = '${id}'`)
  await attacker.rows(`UPDATE "${table}" SET ${set} WHERE "${owner}" = '${id}'`)
  const found = await sentences()
  await attacker.rows(`DELETE FROM "${table}" WHERE "${owner}" = '${id}'`)
  await attacker.rows(`INSERT INTO "${table}" SELECT * FROM pg_temp.kept`)
  await attacker.rows('DROP TABLE pg_temp.kept')
  expect(found.length).toBeGreaterThan(0)
  expect(await sentences()).toEqual([])
})

test('its bundle passes the standalone verifier', async () => {
  let text = ''
  const { title } = await db.client.programme.findUniqueOrThrow({ where: { id } })
  for await (const piece of bundleText({ id, code: world.code, title }, new Date().toISOString()))
    text += piece
  const path = join(db.folder, 'bundle.json')
  await writeFile(path, text)
  const said = execFileSync(process.execPath, ['scripts/verify-trail.mjs', path], { encoding: 'utf8' })
  expect(said).toContain('Verdict: WHOLE')
  expect(said).toContain('over')
})
