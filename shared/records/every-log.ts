import type { Log } from './log'
import type { ProgrammeRecords } from './programme-records'

/** Every log of a programme, those of one characteristic together. */
export const everyLog = ({ logs }: Pick<ProgrammeRecords, 'logs'>): readonly Log[] =>
  [...logs.values()].flat()

/** The log of that code; undefined where there is none. */
export const logOfCode = (records: Pick<ProgrammeRecords, 'logs'>, code: string): Log | undefined =>
  everyLog(records).find((log) => log.code === code)
