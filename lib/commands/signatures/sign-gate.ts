import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, programmeCode, sha256Hex, stage } from '@/lib/commands/inputs'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { gateRefusal } from '@/shared/gate/gate'
import { gateFor } from '@/shared/gate/judgement'
import { gateSignatoryRefusal } from '@/shared/gate/separation'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
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
  load: async (tx, _input, context) => ({
    judged: await loadJudged(tx, context),
    entries: await tx.trailEntry.findMany({
      where: { trailId: context.programmeId },
      orderBy: { seq: 'asc' },
      select: { hash: true },
    }),
  }),
  decide({ judged, entries }, { stage: which, department: own, digest }, { actor, newId, head }) {
    if (!actor.departments.includes(own))
      throw new Refused(`You are not in ${DEPARTMENT_NAMES[own].toLowerCase()}.`)
    const { judgement, state } = judged
    const gate = gateFor(judgement, which)
    if (!gate) throw new Refused('There is no such gate.')
    const refused =
      gateRefusal(gate, own) ??
      gateSignatoryRefusal(gate, judgement.items, state.concessions, actor.personId, own)
    if (refused) throw new Refused(refused)
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
      cover: gate.cover,
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
        cover: JSON.parse(gate.cover),
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
