import { text } from '@/app/forms/typed-text'
import type { Rights } from '@/app/guard/rights'
import type { ImportPlace } from '@/app/imports/importer'
import { findWorksLot, type WorksLotFound } from '@/lib/queries/works/works-lot'
import { worksActor } from '@/lib/queries/works/works-actor'
import { partRefusal } from '@/shared/policy'

interface LotAddress {
  readonly supplier: string
  readonly lot: string
}

/** A lot of a supplier, for whoever may test it. */
export const mayTestLot: Rights<LotAddress, WorksLotFound> = async (person, { supplier, lot }) => {
  const message = partRefusal('test-lot', worksActor(person))
  if (message !== undefined) return { status: 403, message }
  const found = await findWorksLot(supplier, lot)
  return found ? { right: found } : { status: 404, message: 'There is no such lot of this supplier.' }
}

/** Readings of a test, imported into a lot of the works. */
export const WORKS_LOT_IMPORT: ImportPlace<LotAddress, WorksLotFound> = {
  command: 'test-lot',
  rights: mayTestLot,
  paramsIn: (form) => ({ supplier: text(form, 'works.code'), lot: text(form, 'lot') }),
  trailIdOf: ({ supplierId }) => supplierId,
}
