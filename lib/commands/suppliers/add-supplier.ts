import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { worksCode } from '@/lib/commands/inputs'
import { openSubject } from '@/lib/commands/works/open-subject'
import { partKey } from '@/shared/records/lot-identity'
import { Refused } from '@/shared/refused'

/** Adds somebody who delivers lots, under the name that every record calls them by. */
export const addSupplier = defineCommand({
  name: 'add-supplier',
  input: z.strictObject({ supplier: worksCode('The supplier') }),
  load: (tx) => tx.supplier.findMany({ select: { code: true } }),
  decide(suppliers, { supplier }, { trailId }) {
    const twin = suppliers.find(({ code }) => partKey(code) === partKey(supplier))
    if (twin)
      throw new Refused(`Supplier ${twin.code} is there already.`, { supplier: 'This name is taken.' })
    return {
      change: { id: trailId, code: supplier },
      record: { id: trailId, supplier },
      result: { supplier },
    }
  },
  async apply(tx, { id, code }, { actor, now }) {
    await openSubject(tx, { id, kind: 'supplier', code })
    await tx.supplier.create({ data: { id, code, addedById: actor.personId, at: now } })
  },
})
