import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { paragraph, programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { loadNonconformities } from '@/lib/programme/load-nonconformities'
import { calendarDate } from '@/shared/columns/calendar-date'
import { correctedById, standingOf } from '@/shared/nonconformities/standing'
import { Refused } from '@/shared/refused'

/** What was done about a nonconformity: contained, its cause found, corrected, prevented from coming again, checked. */
export const recordStep = defineCommand({
  name: 'record-step',
  input: z.strictObject({
    programme: programmeCode,
    nonconformity: wholeNumber('The nonconformity', 1, 1_000_000),
    kind: z.enum(['containment', 'cause', 'correction', 'corrective action', 'check'], {
      error: 'Choose what is recorded.',
    }),
    text: paragraph('What was done or found'),
    doneOn: calendarDate('The day'),
    helped: z.boolean().nullable(),
  }),
  async load(tx, { nonconformity: number }, { programmeId }) {
    const [found] = await loadNonconformities(tx, { programmeId, number })
    if (!found) throw new Refused(`There is no nonconformity ${number} in this programme.`)
    return found
  },
  subject: ({ number, owner, steps }, { kind }) => ({
    number,
    owner,
    kind,
    correctedById: correctedById(steps),
  }),
  decide({ number, steps, foundOn }, { kind, text, doneOn, helped }, { newId, today }) {
    if (doneOn > today)
      throw new Refused('This day lies in the future.', { doneOn: 'This day lies in the future.' })
    if (doneOn < foundOn)
      throw new Refused('This day lies before it was found.', { doneOn: `It was found on ${foundOn}.` })
    if (kind === 'check' && standingOf(steps) !== 'corrected')
      throw new Refused('There is no correction to check: record what was corrected first.')
    if (kind === 'check' && helped === null)
      throw new Refused('Say whether it helped.', { helped: 'Choose yes or no.' })
    const step = { id: newId(), nonconformity: number, kind, text, doneOn }
    const answer = kind === 'check' ? helped : null
    return { change: { ...step, helped: answer }, record: { ...step, helped: answer } }
  },
  async apply(tx, step, { programmeId, actor, now }) {
    await tx.nonconformityStep.create({
      data: { ...step, programmeId, addedById: actor.personId, at: now },
    })
  },
})
