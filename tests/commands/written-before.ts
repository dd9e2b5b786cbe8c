import { nativeSha256 } from '@/lib/trail/native-sha256'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { appendEntry, type TrailEntry } from '@/shared/trail/entry'
import { trailRoot } from '@/shared/trail/merkle'
import type { Attacker } from '@/tests/commands/attacker'

type Payload = Record<string, JsonValue>

/** What the entries of the first versions did not say yet, by command. */
const NOT_YET_SAID: Readonly<Record<string, readonly string[]>> = {
  'open-programme': ['plan'],
  'add-item': ['position'],
  'approve-item': ['approval'],
  'sign-gate': ['signature'],
  'test-lot': ['batch', 'size', 'mediaType'],
  'add-readings': ['batch', 'size', 'mediaType'],
  'create-machine-token': ['tokenHash'],
}
const NOT_YET_SAID_OF_LESSONS = ['authorId', 'authority', 'document', 'clause', 'relaxes', 'reason']

/** Makes a trail what it would be, had the first versions written it: shorter entries, chained and sealed anew. */
export const asWrittenBefore = (attacker: Attacker, trailId: string): Promise<void> =>
  rewriteTrail(attacker, trailId, shorter)

/** Changes what the entries of a trail say, chained and sealed anew. */
export async function rewriteTrail(
  attacker: Attacker,
  trailId: string,
  alter: (command: string, payload: Payload) => Payload,
): Promise<void> {
  const entries = await attacker.rows<TrailEntry>(
    'SELECT * FROM "TrailEntry" WHERE "trailId" = $1 ORDER BY "seq"',
    [trailId],
  )
  const rewritten: TrailEntry[] = []
  for (const entry of entries) {
    const payload = alter(entry.command, JSON.parse(entry.payload) as Payload)
    if (entry.command === 'sign-gate') await sealAgain(attacker, trailId, payload, rewritten)
    rewritten.push(appendEntry(rewritten.at(-1), { ...entry, payload }, nativeSha256))
  }
  await attacker.rows('ALTER TABLE "TrailEntry" DISABLE TRIGGER USER')
  for (const { seq, payload, previousHash, hash } of rewritten)
    await attacker.rows(
      'UPDATE "TrailEntry" SET "payload" = $3, "previousHash" = $4, "hash" = $5 WHERE "trailId" = $1 AND "seq" = $2',
      [trailId, seq, payload, previousHash, hash],
    )
  await attacker.rows('ALTER TABLE "TrailEntry" ENABLE TRIGGER USER')
  await attacker.rows('UPDATE "Trail" SET "headHash" = $2 WHERE "id" = $1', [trailId, rewritten.at(-1)?.hash])
}

function shorter(command: string, payload: Payload): Payload {
  for (const member of NOT_YET_SAID[command] ?? []) delete payload[member]
  for (const brought of (payload['lessons'] as Payload[] | undefined) ?? [])
    if ('requirement' in brought) for (const member of NOT_YET_SAID_OF_LESSONS) delete brought[member]
  return payload
}

/** The seal that the signature was given over the rewritten entries, in its entry and in its row. */
async function sealAgain(
  attacker: Attacker,
  trailId: string,
  payload: Payload,
  before: readonly TrailEntry[],
): Promise<void> {
  const hashes = before.map(({ hash }) => hash)
  payload['headHash'] = hashes.at(-1) ?? ''
  payload['merkleRoot'] = trailRoot(hashes, nativeSha256)
  await attacker.rows(
    'UPDATE "GateSignature" SET "headHash" = $3, "merkleRoot" = $4 WHERE "programmeId" = $1 AND "trailSeq" = $2',
    [trailId, before.length, payload['headHash'], payload['merkleRoot']],
  )
}
