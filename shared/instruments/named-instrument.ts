import type { Verdict } from '@/shared/rules/finding'
import { calibrationStatus, type InstrumentFile } from './calibration-status'

/** A reading that names its instrument by the tag on it, or none. */
interface NamedReading {
  readonly instrument: string | undefined
  readonly testedOn: string
}

/**
 * Why a reading may not be believed: its instrument is not on file or was not in
 * calibration that day, or none is named though the reading lies so near to the
 * limit that only a known one can tell. Undefined when it may be believed.
 */
export function namedInstrumentDoubt(
  { instrument: tag, testedOn }: NamedReading,
  verdict: Verdict,
  file: InstrumentFile,
): string | undefined {
  if (tag === undefined)
    return verdict === 'marginal' ? 'so near to the limit the instrument must be named' : undefined
  const wanted = tag.trim().toLowerCase()
  const named = file.instruments.find((one) => one.tag.trim().toLowerCase() === wanted)
  if (!named) return `no instrument ${tag} is on file`
  const status = calibrationStatus(named.id, testedOn, file)
  return status.stands ? undefined : status.message
}
