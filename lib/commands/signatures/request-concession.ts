import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, paragraph, programmeCode } from '@/lib/commands/inputs'
import { boundsInput, newestConcession, refuseUnbounded } from '@/lib/commands/signatures/concession-input'
import { itemNamed, loadJudged } from '@/lib/commands/signatures/load-judged'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { concessionFor, concessionName, concessionStatus, isAlive, isPermit } from '@/shared/gate/concession'
import { concededData } from '@/shared/gate/conceded-data'
import { Refused } from '@/shared/refused'
import { canBeConceded } from '@/shared/rules/finding'

/** Asks to pass with one finding that fails, or that lacks something named, for so many or until a day. */
export const requestConcession = defineCommand({
  name: 'request-concession',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    rule: line('The finding'),
    why: paragraph('Why it is tolerable'),
    ...boundsInput,
  }),
  load: async (tx, _input, context) => ({
    judged: await loadJudged(tx, context),
    newest: await newestConcession(tx, context.programmeId),
  }),
  decide({ judged, newest }, { item: key, rule, why, quantity, untilOn }, { newId, today }) {
    const { item } = itemNamed(judged, key)
    const finding = judged.judgement.findings.get(rule)
    if (!finding || !item.definition.rules.some(({ id }) => id === rule))
      throw new Refused('The item has no such finding.')
    if (!canBeConceded(finding))
      throw new Refused(
        `This finding is ${finding.verdict}. A concession is for one that fails, or that is undetermined and names what is missing.`,
      )
    refuseUnbounded({ quantity, untilOn }, today)
    const twin = judged.state.concessions.find(
      (entry) =>
        entry.itemKey === key &&
        entry.rule === rule &&
        !isPermit(entry) &&
        isAlive(concessionStatus(entry, finding, judged.state.facts)),
    )
    if (twin) throw new Refused(`Concession ${twin.number} is asked for this finding already.`)
    const permit = concessionFor(finding, key, judged.state)
    if (permit) throw new Refused(`${concessionName(permit)} lets this finding pass already.`)
    const data = concededData(finding, judged.state.facts)
    const concession = {
      id: newId(),
      number: newest + 1,
      itemKey: key,
      rule,
      findingDigest: nativeSha256(data),
      findingData: data,
      why,
      quantity,
      untilOn,
    }
    return {
      change: concession,
      record: {
        ...concession,
        findingData: JSON.parse(data),
        found: finding.found,
        limit: finding.limit,
        ...(finding.verdict === 'undetermined' && { missing: [...(finding.missing ?? [])] }),
      },
      result: { concession: concession.number },
    }
  },
  async apply(tx, concession, { programmeId, actor, now }) {
    await tx.concession.create({
      data: { ...concession, programmeId, requestedById: actor.personId, requestedAt: now },
    })
  },
})
