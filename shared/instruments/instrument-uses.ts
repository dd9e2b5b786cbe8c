import { calibrationStatus, type CalibrationStatus } from './calibration-status'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'
import { everyLog } from '@/shared/records/every-log'

/** A test that rests on an instrument, with what was known of the instrument on its day. */
export interface TestUse {
  readonly lot: Lot
  readonly test: LotTest
  readonly status: CalibrationStatus
}

/** What of a programme rests on one instrument. */
export interface InstrumentUses {
  readonly instrument: Instrument
  readonly tests: readonly TestUse[]
  readonly logs: readonly Log[]
  /** Names of the gauge studies made with it, in the order they were entered. */
  readonly studies: readonly string[]
}

/** The instruments that tests, logs or gauge studies of a programme name, by tag; any others are left out. */
export function instrumentUses(records: ProgrammeRecords): InstrumentUses[] {
  const calibrations = recordsOfKind(records, 'calibration')
  const readings = recordsOfKind(records, 'gauge-reading')
  const file = { instruments: records.instruments, calibrations }
  const logs = everyLog(records)
  return records.instruments
    .map((instrument) => ({
      instrument,
      tests: records.lots.flatMap((lot) =>
        lot.tests
          .filter(({ instrumentId }) => instrumentId === instrument.id)
          .map((test) => ({
            lot,
            test,
            status: calibrationStatus(instrument.id, test.testedOn, file),
          })),
      ),
      logs: logs.filter(({ instrumentId }) => instrumentId === instrument.id),
      studies: [
        ...new Set(
          readings.filter(({ instrumentTag }) => instrumentTag === instrument.tag).map(({ study }) => study),
        ),
      ],
    }))
    .filter(({ tests, logs: own, studies }) => tests.length + own.length + studies.length > 0)
    .sort((one, other) => (one.instrument.tag < other.instrument.tag ? -1 : 1))
}
