import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, programmeCode, sha256Hex, stage } from '@/lib/commands/inputs'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { gateFor } from '@/shared/gate/judgement'
import { Refused } from '@/shared/refused'
import { trailRoot } from '@/shared/trail/merkle'

/**
 * A department signs a gate: design, then production, then quality, whose
 * signature opens it. The signature keeps the stage's digest and the Merkle
 * root of the trail so far.
 */
export const signGate = defineCommand({
  name: 'sign-gate',
  input: z.strictObject({ programme: programmeCode, stage, department, digest: sha256Hex }),
  async load(tx, { stage: which }, context) {
    const { judgement, state } = await loadJudged(tx, context)
    const gate = gateFor(judgement, which)
    if (!gate) throw new Refused('There is no such gate.')
    const entries = await tx.trailEntry.findMany({
      where: { trailId: context.programmeId },
      orderBy: { seq: 'asc' },
      select: { hash: true },
    })
    return { gate, items: judgement.items, concessions: state.concessions, entries }
  },
  subject: ({ gate, items, concessions }, { department: own }) => ({
    department: own,
    gate,
    items,
    concessions,
  }),
  decide({ gate, entries }, { stage: which, department: own, digest }, { newId, head }) {
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
      },
    }
  },
  async apply(tx, signature, { programmeId, actor, now }) {
    await tx.gateSignature.create({
      data: { ...signature, programmeId, personId: actor.personId, personName: actor.name, at: now },
    })
  },
})
