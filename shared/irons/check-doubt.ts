import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { Log } from '@/shared/records/log'
import type { Verdict } from '@/shared/rules/finding'

/**
 * Why a check inside its limit proves nothing: its instrument was not in
 * calibration that day, or is not named although the value lies so near to the
 * limit that only a known instrument can tell. Undefined when it may be believed.
 */
export function checkDoubt(
  { instrumentId }: Pick<Log, 'instrumentId'>,
  on: string,
  verdict: Verdict,
  file: InstrumentFile,
): string | undefined {
  if (instrumentId === null)
    return verdict === 'marginal' ? 'so near to a limit the instrument must be named' : undefined
  const status = calibrationStatus(instrumentId, on, file)
  return status.stands ? undefined : status.message
}
