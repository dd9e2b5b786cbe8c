import { database } from '@/lib/db/client'
import { loadChangeNotices } from '@/lib/programme/change-notices'
import type { ChangeNotice } from '@/shared/gate/change-notice'

/** The change notices of a programme, newest first: four statements. */
export const readChangeNotices = (programmeId: string): Promise<ChangeNotice[]> =>
  loadChangeNotices(database(), programmeId)

/** One notice by its number as an address gives it; undefined when the programme has none of it. */
export async function readChangeNotice(
  programmeId: string,
  number: string,
): Promise<ChangeNotice | undefined> {
  if (!/^\d{1,6}$/.test(number)) return undefined
  return (await loadChangeNotices(database(), programmeId, Number(number)))[0]
}
