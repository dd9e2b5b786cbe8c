import { instruments, recordsOf } from '@/shared/rules/record-source'

/** What every rule on a process log reads beside the log. */
export const signalAnswers = recordsOf('signal-answer', 'answers to chart signals')
export const chartResets = recordsOf('chart-reset', 'control-limit resets at the machine')
export const instrumentsOnFile = instruments
export const calibrations = recordsOf('calibration', 'earlier calibrations')
