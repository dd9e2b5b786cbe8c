import { database } from '@/lib/db/client'
import type { ColumnMapping } from '@/lib/readings/column-mapping'

/** Which column was which at the last import into a log. */
export async function rememberedMapping(logId: string): Promise<ColumnMapping | undefined> {
  const log = await database().log.findUnique({ where: { id: logId }, select: { mapping: true } })
  return (log?.mapping as ColumnMapping | null) ?? undefined
}
