import type { Log } from '@/shared/records/log'
import type { RecordSource } from '@/shared/rules/record-source'
import { instruments, recordsOf } from '@/shared/rules/record-source'

/** What every rule on a process log reads beside the log. */
export const signalAnswers = recordsOf('signal-answer', 'answers to chart signals')
export const instrumentsOnFile = instruments
export const calibrations = recordsOf('calibration', 'earlier calibrations')

/** Every log of the programme, by characteristic. */
export const processLogs: RecordSource<ReadonlyMap<string, readonly Log[]>> = {
  source: 'records',
  key: 'logs',
  label: 'process logs',
  from: (records) => records.logs,
}
