import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { openConcession } from '@/lib/commands/signatures/load-concession'
import type { RecordedDeparture } from '@/shared/commands/signatures/departure-in-words'
import { loadJudged } from '@/lib/commands/signatures/load-judged'

/** One of the two signatures, design's or quality's, that let a finding pass, or that permit one to depart. */
export const grantConcession = defineCommand({
  name: 'grant-concession',
  input: z.strictObject({
    programme: programmeCode,
    concession: wholeNumber('The concession', 1, 1_000_000),
    department,
  }),
  load: async (tx, { concession }, context) => openConcession(await loadJudged(tx, context), concession),
  subject: (concession, { department: own }) => ({ department: own, concession }),
  decide: (
    { id, itemKey, rule, why, quantity, untilOn, findingDigest, findingData, permit },
    { concession, department: own },
  ) => ({
    change: { id, own },
    record: {
      concession,
      item: itemKey,
      rule,
      department: own,
      meaning: 'grants the concession',
      why,
      quantity,
      untilOn,
      findingDigest,
      findingData: JSON.parse(findingData ?? 'null'),
      ...(permit && { permit: JSON.parse(JSON.stringify(permit)) as RecordedDeparture }),
    },
  }),
  async apply(tx, { id, own }, { actor, now }) {
    const signed =
      own === 'design'
        ? { designById: actor.personId, designName: actor.name, designAt: now }
        : { qualityById: actor.personId, qualityName: actor.name, qualityAt: now }
    await tx.concession.update({ where: { id }, data: signed })
  },
})
