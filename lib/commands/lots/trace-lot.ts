import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode } from '@/lib/commands/inputs'
import { lotCalled } from '@/lib/programme/works/shared-lots'
import { Refused } from '@/shared/refused'

/** Records which assemblies of the programme parts of a lot went into. */
export const traceLot = defineCommand({
  name: 'trace-lot',
  input: z.strictObject({
    programme: programmeCode,
    /** As the programme calls it. */
    lot: line('The lot', 130),
    assemblies: z
      .array(line('The assembly', 40))
      .min(1, 'Name at least one assembly.')
      .max(5000, 'At most 5000 assemblies at once.'),
  }),
  async load(tx, { lot: name }, { trailId, subject }) {
    const own = await lotCalled(tx, { id: trailId, code: subject.code }, name)
    if (!own) throw new Refused(`There is no lot ${name} in this programme.`)
    const { id, part, usedIn } = await tx.lot.findUniqueOrThrow({
      where: { id: own.id },
      select: { id: true, part: true, usedIn: true },
    })
    return own.allocated === undefined
      ? { id, name, part, usedIn, ofTheWorks: false }
      : { id, name, part, usedIn: own.usedIn, ofTheWorks: true }
  },
  decide({ id: lotId, name, part, usedIn, ofTheWorks }, { assemblies }, { newId }) {
    const added = [...new Set(assemblies)].filter((assembly) => !usedIn.includes(assembly))
    if (added.length === 0) throw new Refused(`Lot ${name} is recorded for all of these already.`)
    const use = ofTheWorks ? { id: newId(), lotId } : undefined
    return {
      change: { lotId, usedIn, added, use },
      record: { ...use, lot: name, part, assemblies: added },
    }
  },
  async apply(tx, { lotId, usedIn, added, use }, { programmeId, actor, now }) {
    if (use)
      await tx.lotUse.create({
        data: { ...use, assemblies: added, programmeId, addedById: actor.personId, at: now },
      })
    else await tx.lot.update({ where: { id: lotId }, data: { usedIn: [...usedIn, ...added] } })
  },
})
