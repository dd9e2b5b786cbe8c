import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { openConcession } from '@/lib/commands/signatures/load-concession'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { concessionGrantRefusal } from '@/shared/gate/separation'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

/** One of the two signatures, design's or quality's, that let a failing finding pass. */
export const grantConcession = defineCommand({
  name: 'grant-concession',
  input: z.strictObject({
    programme: programmeCode,
    concession: wholeNumber('The concession', 1, 1_000_000),
    department,
  }),
  load: (tx, _input, context) => loadJudged(tx, context),
  decide(judged, { concession: number, department: own }, { actor }) {
    if (!actor.departments.includes(own))
      throw new Refused(`You are not in ${DEPARTMENT_NAMES[own].toLowerCase()}.`)
    const concession = openConcession(judged, number)
    const refused = concessionGrantRefusal(concession, actor.personId, own)
    if (refused) throw new Refused(refused)
    const { id, itemKey, rule, why, quantity, untilOn } = concession
    return {
      change: { id, own },
      record: {
        concession: number,
        item: itemKey,
        rule,
        department: own,
        meaning: 'grants the concession',
        why,
        quantity,
        untilOn,
        findingDigest: concession.findingDigest,
        findingData: JSON.parse(concession.findingData ?? 'null'),
      },
    }
  },
  async apply(tx, { id, own }, { actor, now }) {
    const signed =
      own === 'design'
        ? { designById: actor.personId, designName: actor.name, designAt: now }
        : { qualityById: actor.personId, qualityName: actor.name, qualityAt: now }
    await tx.concession.update({ where: { id }, data: signed })
  },
})
