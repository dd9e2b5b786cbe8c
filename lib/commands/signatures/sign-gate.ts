import { isDeepStrictEqual } from 'node:util'
import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, programmeCode, sha256Hex, stage } from '@/lib/commands/inputs'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import type { Context } from '@/lib/commands/command'
import type { Transaction } from '@/lib/db/transaction'
import { worksHeadsOf } from '@/lib/programme/works/works-heads'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { gateFor } from '@/shared/gate/judgement'
import { Refused } from '@/shared/refused'
import { trailRoot } from '@/shared/trail/merkle'

const TRIES = 5

/** The facts as judged, and where the works' trails ended that they were read from: read again while those move on. */
async function judgedWithHeads(tx: Transaction, context: Context) {
  for (let tries = 0; tries < TRIES; tries++) {
    const before = await worksHeadsOf(tx, context.programmeId)
    const judged = await loadJudged(tx, context)
    const worksHeads = await worksHeadsOf(tx, context.programmeId)
    if (isDeepStrictEqual(before, worksHeads)) return { judged, worksHeads }
  }
  throw new Refused('Readings keep coming in while the gate is signed. Try again in a moment.')
}

/**
 * A department signs a gate: design, then production, then quality, whose
 * signature opens it. The signature keeps the stage's digest and the Merkle
 * root of the trail so far; its entry also names where the trails of the works ended that the stage rests on.
 */
export const signGate = defineCommand({
  name: 'sign-gate',
  input: z.strictObject({ programme: programmeCode, stage, department, digest: sha256Hex }),
  async load(tx, { stage: which }, context) {
    const { judged, worksHeads } = await judgedWithHeads(tx, context)
    const { judgement, state } = judged
    const gate = gateFor(judgement, which)
    if (!gate) throw new Refused('There is no such gate.')
    const entries = await tx.trailEntry.findMany({
      where: { trailId: context.programmeId },
      orderBy: { seq: 'asc' },
      select: { hash: true },
    })
    return { gate, items: judgement.items, concessions: state.concessions, entries, worksHeads }
  },
  subject: ({ gate, items, concessions }, { department: own }) => ({
    department: own,
    gate,
    items,
    concessions,
  }),
  decide({ gate, entries, worksHeads }, { stage: which, department: own, digest }, { newId, head }) {
    if (gate.digest !== digest)
      throw new Refused('The stage changed since you opened it. Read it again before you sign.')
    const merkleRoot = trailRoot(
      entries.map(({ hash }) => hash),
      nativeSha256,
    )
    const signature = {
      id: newId(),
      stage: which,
      department: own,
      digest,
      cover: gate.signedContent,
      merkleRoot,
      trailSeq: head.seq,
      headHash: head.hash,
    }
    return {
      change: signature,
      record: {
        signature: signature.id,
        stage: which,
        department: own,
        meaning: own === 'quality' ? 'signs the gate and opens it' : 'signs the gate',
        digest,
        cover: JSON.parse(gate.signedContent),
        merkleRoot,
        trailSeq: head.seq,
        headHash: head.hash,
        worksHeads: worksHeads.map((one) => ({ ...one })),
      },
    }
  },
  async apply(tx, signature, { programmeId, actor, now }) {
    await tx.gateSignature.create({
      data: { ...signature, programmeId, personId: actor.personId, personName: actor.name, at: now },
    })
  },
})
