import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, paragraph, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { itemNamed, loadJudged } from '@/lib/commands/signatures/load-judged'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { concessionStatus, isAlive } from '@/shared/gate/concession'
import { findingData } from '@/shared/gate/finding-data'
import { calendarDate } from '@/shared/columns/calendar-date'
import { Refused } from '@/shared/refused'
import { CAN_BE_CONCEDED } from '@/shared/rules/finding'

/** Asks to pass with one failing finding, for so many or until a day. */
export const requestConcession = defineCommand({
  name: 'request-concession',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    rule: line('The finding'),
    why: paragraph('Why it is tolerable'),
    quantity: wholeNumber('The number of boards', 1, 100_000_000).nullable(),
    untilOn: calendarDate('The last day').nullable(),
  }),
  load: async (tx, _input, context) => ({
    judged: await loadJudged(tx, context),
    newest:
      (await tx.concession.aggregate({ where: { programmeId: context.programmeId }, _max: { number: true } }))
        ._max.number ?? 0,
  }),
  decide({ judged, newest }, { item: key, rule, why, quantity, untilOn }, { newId, today }) {
    const { item } = itemNamed(judged, key)
    const finding = judged.judgement.findings.get(rule)
    if (!finding || !item.definition.rules.some(({ id }) => id === rule))
      throw new Refused('The item has no such finding.')
    if (!CAN_BE_CONCEDED[finding.verdict])
      throw new Refused(
        `This finding does not fail; it is ${finding.verdict}. A concession is for a failing one.`,
      )
    if (quantity === null && untilOn === null)
      throw new Refused('Say for how many boards, or until which day.', {
        quantity: 'Give a number, or a last day.',
      })
    if (untilOn !== null && untilOn < today)
      throw new Refused('The last day has passed already.', {
        untilOn: 'Choose a day that is still to come.',
      })
    const twin = judged.state.concessions.find(
      (entry) =>
        entry.itemKey === key && entry.rule === rule && isAlive(concessionStatus(entry, finding, today)),
    )
    if (twin) throw new Refused(`Concession ${twin.number} is asked for this finding already.`)
    const data = findingData(finding)
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
