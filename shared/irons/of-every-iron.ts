import { rowsByText } from '@/shared/logs/readings-by-text'
import type { Log } from '@/shared/records/log'

/** What is made of each iron on these logs, from the rows of its checks in time order. */
export const ofEveryIron = <T>(
  logs: readonly Log[],
  make: (log: Log, iron: string, rows: readonly number[]) => T,
): T[] => logs.flatMap((log) => [...rowsByText(log, 'iron')].map(([iron, rows]) => make(log, iron, rows)))
