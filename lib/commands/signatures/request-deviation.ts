import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, paragraph, programmeCode } from '@/lib/commands/inputs'
import { boundsInput, newestConcession, refuseUnbounded } from '@/lib/commands/signatures/concession-input'
import { itemNamed, loadJudged } from '@/lib/commands/signatures/load-judged'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { numberWanted } from '@/shared/columns/number-wanted'
import { concessionStatus, isAlive, isPermit } from '@/shared/gate/concession'
import type { RecordedDeparture } from '@/shared/commands/signatures/departure-in-words'
import { DEPARTURE_WAYS, type DepartureBounds } from '@/shared/gate/deviation-permit'
import { impossibleLimit } from '@/shared/plan/limit-range'
import { governingRequirement, isStricter, type Requirement } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'
import { limitsRead } from '@/shared/rules/limits-read'
import type { AnyRule } from '@/shared/rules/rule'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

const departure = z.discriminatedUnion(
  'kind',
  [
    z.strictObject({
      kind: z.literal('limit'),
      limit: line('The limit'),
      value: z.number({ error: numberWanted('How far it may depart') }),
    }),
    z.strictObject({
      kind: z.literal('parts'),
      way: z.enum(DEPARTURE_WAYS, { error: 'Choose in which way it departs.' }),
      parts: z.array(line('The name', 200)).max(50, 'At most 50 names at once.'),
    }),
  ],
  { error: 'Choose how it may depart.' },
)

/**
 * Asks, before anything departs, that a finding of one rule may: from a limit as far as a value, or for named things.
 * It is granted and refused as a concession is.
 */
export const requestDeviation = defineCommand({
  name: 'request-deviation',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    rule: line('The finding'),
    departure,
    why: paragraph('Why it is tolerable'),
    ...boundsInput,
  }),
  load: async (tx, _input, context) => ({
    judged: await loadJudged(tx, context),
    newest: await newestConcession(tx, context.programmeId),
  }),
  decide(
    { judged, newest },
    { item: key, rule: id, departure: asked, why, quantity, untilOn },
    { newId, today },
  ) {
    const { item } = itemNamed(judged, key)
    const rule = item.definition.rules.find((entry) => entry.id === id)
    if (!rule) throw new Refused('The item has no such finding.')
    const { facts, concessions } = judged.state
    const permit: DepartureBounds =
      asked.kind === 'limit' ? asked : { ...asked, parts: [...new Set(asked.parts)].sort() }
    if (permit.kind === 'limit') refuseDeparture(rule, permit, facts.requirements)
    refuseUnbounded({ quantity, untilOn }, today)
    const text = canonicalJson(permit as unknown as JsonValue)
    const twin = concessions.find(
      (entry) =>
        entry.itemKey === key &&
        entry.rule === id &&
        isPermit(entry) &&
        canonicalJson(entry.permit as unknown as JsonValue) === text &&
        isAlive(concessionStatus(entry, undefined, facts)),
    )
    if (twin) throw new Refused(`Deviation permit ${twin.number} is asked for this already.`)
    const asking = {
      id: newId(),
      number: newest + 1,
      itemKey: key,
      rule: id,
      findingDigest: nativeSha256(text),
      permit: JSON.parse(text) as RecordedDeparture,
      why,
      quantity,
      untilOn,
    }
    return { change: asking, record: asking, result: { concession: asking.number } }
  },
  async apply(tx, { permit, ...asked }, { programmeId, actor, now }) {
    await tx.concession.create({
      data: {
        ...asked,
        permit: permit as object,
        programmeId,
        requestedById: actor.personId,
        requestedAt: now,
      },
    })
  },
})

/** A departure is from a limit that the rule judges against, to a looser value that the limit could have. */
function refuseDeparture(
  rule: AnyRule,
  { limit: key, value }: { readonly limit: string; readonly value: number },
  requirements: readonly Requirement[],
): void {
  const limit = limitsRead(rule).find((entry) => entry.key === key)
  if (!limit)
    throw new Refused('This check is not judged against that limit.', {
      'departure.limit': 'Choose one that the check reads.',
    })
  const impossible = impossibleLimit(limit, value)
  if (impossible) throw new Refused(impossible, { 'departure.value': impossible })
  const governing = governingRequirement(limit, requirements)
  if (!isStricter(limit, governing.value, value))
    throw new Refused(
      `${limit.label} is ${limit.direction} ${governing.value}: ${value} departs from nothing.`,
      { 'departure.value': `Give a looser value than ${governing.value}.` },
    )
}
