import { database } from '@/lib/db/client'
import { lotsInStore, type StoreLot } from '@/lib/programme/works/store-of-lots'
import { leftInStore } from '@/shared/storage/order-of-use'

/** Every lot of the works of which something is left; two statements. */
export const readStore = async (): Promise<StoreLot[]> =>
  (await lotsInStore(database())).filter((lot) => leftInStore(lot) > 0)
