import { text } from '@/app/forms/typed-text'
import { mayAtTheWorks, type Rights } from '@/app/guard/rights'
import type { ImportPlace } from '@/app/imports/importer'
import { findWorksLot, type WorksLotFound } from '@/lib/queries/works/works-lot'

interface LotAddress {
  readonly supplier: string
  readonly lot: string
}

const findsLot: Rights<LotAddress, WorksLotFound> = async (_person, { supplier, lot }) => {
  const found = await findWorksLot(supplier, lot)
  return found ? { right: found } : { status: 404, message: 'There is no such lot of this supplier.' }
}

/** A lot of a supplier, for whoever may test it. */
export const mayTestLot = mayAtTheWorks('test-lot', findsLot)

/** Readings of a test, imported into a lot of the works. */
export const WORKS_LOT_IMPORT: ImportPlace<LotAddress, WorksLotFound> = {
  command: 'test-lot',
  rights: mayTestLot,
  paramsIn: (form) => ({ supplier: text(form, 'works.code'), lot: text(form, 'lot') }),
  trailIdOf: ({ supplierId }) => supplierId,
}
