import type { Instrument } from '@/shared/records/instrument'
import type { RecordOf } from '@/shared/records/record-kinds'
import { groupedBy } from '@/shared/grouped-by'
import { memo } from '@/shared/memo'

export type Calibration = RecordOf<'calibration'>

/** What is known of instruments and their certificates. */
export interface InstrumentFile {
  readonly instruments: readonly Instrument[]
  /** Older certificates; undefined where none are kept. */
  readonly calibrations: readonly Calibration[]
}

/** Whether a reading of a given day may be believed, as far as its instrument goes. */
export type CalibrationStatus =
  | { readonly stands: true; readonly instrument: Instrument }
  /** `proven` is false where a certificate or a note could still settle it. */
  | {
      readonly stands: false
      readonly proven: boolean
      readonly reason: CalibrationDoubt
      /** The day the reason rests on: when it was due, first calibrated or found outside. */
      readonly since?: string
      /** The reason, of the instrument by its tag where it is on file, else of the reading. */
      readonly message: string
      readonly instrument?: Instrument
    }

export type CalibrationDoubt =
  'unnamed' | 'not on file' | 'ran out' | 'not yet calibrated' | 'found outside' | 'out of use'

/**
 * The status of an instrument on the date of a test. It stands when a
 * certificate covers the date and no later calibration found the instrument
 * outside its limits.
 */
export function calibrationStatus(
  instrumentId: string | null,
  date: string,
  file: InstrumentFile,
): CalibrationStatus {
  if (instrumentId === null)
    return { stands: false, proven: false, reason: 'unnamed', message: 'names no instrument' }
  const instrument = byId(file.instruments).get(instrumentId)
  if (!instrument)
    return {
      stands: false,
      proven: true,
      reason: 'not on file',
      message: 'names an instrument that is not on file',
    }

  const certificates = certificatesOf(instrument, file.calibrations)
  const covering = certificates.find(({ calibratedOn, dueOn }) => calibratedOn <= date && date <= dueOn)
  if (!covering) return { ...uncovered(instrument, date, certificates), instrument }

  const after = certificates.filter(({ calibratedOn }) => calibratedOn > date)
  const next = after[0]
  if (next?.found === 'outside') {
    const message = `${instrument.tag} was found outside its limits on ${next.calibratedOn}, after the reading`
    return {
      stands: false,
      proven: true,
      reason: 'found outside',
      since: next.calibratedOn,
      message,
      instrument,
    }
  }
  if (instrument.outOfUse && next?.found !== 'within') {
    const message = `${instrument.tag} is out of use, and no later calibration says how it was found`
    return { stands: false, proven: false, reason: 'out of use', message, instrument }
  }
  return { stands: true, instrument }
}

interface Certificate {
  readonly calibratedOn: string
  readonly dueOn: string
  readonly found: Calibration['found']
}

/** Every certificate of an instrument, earliest first; a record repeats the newest to say how it was found. */
function certificatesOf(instrument: Instrument, calibrations: readonly Calibration[]): Certificate[] {
  const own = recordsByTag(calibrations).get(instrument.tag) ?? []
  const newest: Certificate = { ...instrument, found: 'not stated' }
  const repeated = own.some(({ calibratedOn }) => calibratedOn === instrument.calibratedOn)
  return (repeated ? [...own] : [...own, newest]).sort((a, b) => (a.calibratedOn < b.calibratedOn ? -1 : 1))
}

function uncovered(instrument: Instrument, date: string, certificates: readonly Certificate[]) {
  const earlier = certificates.filter(({ calibratedOn }) => calibratedOn <= date)
  const lapsed = earlier[earlier.length - 1]
  if (lapsed) {
    return {
      stands: false,
      proven: true,
      reason: 'ran out',
      since: lapsed.dueOn,
      message: `${instrument.tag} was due on ${lapsed.dueOn}`,
    } as const
  }
  const since = certificates[0]?.calibratedOn ?? date
  const message = `${instrument.tag} has no certificate on file before ${since}`
  return { stands: false, proven: false, reason: 'not yet calibrated', since, message } as const
}

/** Look-ups by id and by tag, kept for as long as their list is. */
export const byId = memo(
  (instruments: readonly Instrument[]): ReadonlyMap<string, Instrument> =>
    new Map(instruments.map((instrument) => [instrument.id, instrument])),
)

const recordsByTag = memo((calibrations: readonly Calibration[]) =>
  groupedBy(calibrations, ({ instrumentTag }) => instrumentTag),
)
