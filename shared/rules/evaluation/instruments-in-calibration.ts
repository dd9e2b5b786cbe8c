import { isUsable } from '@/shared/records/lot-identity'
import { sourceOf } from '@/shared/rules/governing-source'
import { calibrationNoticeMin } from '@/shared/plan/limits/evaluation-instruments'
import { fromMemory } from '@/shared/sources/provenance'
import { daysBetween } from '@/shared/quantity/calendar'
import { formatNumber } from '@/shared/quantity/format'
import { byId, calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot, LotTest } from '@/shared/records/lot'
import { methodName, needsInstrument } from '@/shared/methods/test-methods'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { instruments, lots, recordsOf } from '@/shared/rules/record-source'
import { rule, today } from '@/shared/rules/rule'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { aboutLot } from '@/shared/records/lot-identity'
import { calibrationMeasured } from '@/shared/instruments/calibration-measured'
import { count } from '@/shared/rules/measure'

const SOURCE = fromMemory(
  'ISO 9001, 7.1.5.2: measuring equipment calibrated at stated intervals, earlier results reviewed when it is found unfit',
)
const LIMIT_SAYS =
  'every test made with an instrument in calibration on its date, and no instrument about to run out while lots wait'

export const instrumentsInCalibration = rule({
  id: 'instruments-in-calibration',
  title: 'Instruments in calibration at every test',
  why: 'A reading is worth what its instrument is. One that was out of date, out of use or later found outside its limits leaves every lot it judged unjudged.',
  formula: 'each test’s instrument calibrated on or before its day, and not run out',
  stage: 'evaluation',
  version: 2,
  reads: {
    lots,
    instruments,
    calibrations: recordsOf('calibration', 'calibrations'),
    notice: calibrationNoticeMin,
    today,
  },
  judge(inputs): Judged {
    const file: InstrumentFile = { instruments: inputs.instruments, calibrations: inputs.calibrations }
    const tests = inputs.lots.flatMap((lot) =>
      lot.tests
        .filter(({ method, instrumentId }) => instrumentId !== null || needsInstrument(method))
        .map((test) => ({ lot, test })),
    )
    if (tests.length === 0) {
      return undetermined(
        'No test with an instrument is recorded yet.',
        ['a test of a lot, with the instrument it was made with'],
        LIMIT_SAYS,
      )
    }
    const parts = tests.map((one) => partOf(one, file))
    const waiting = inputs.lots.some((lot) => lot.disposition === null)
    const dueParts = waiting ? dueSoon(tests, file, inputs) : []
    const spoken = spokenByWorst([...parts, ...dueParts])
    const good = parts.filter(({ verdict }) => verdict === 'meets').length
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every test (${good}) was made with an instrument in calibration.`
          : spoken.found,
      measured: { tests: count(good) },
      limit: LIMIT_SAYS,
      working: [
        {
          label: 'Tests made in calibration',
          formula:
            'a certificate covers the test’s date, and no later calibration found the instrument outside its limits',
          numbers: `${good} of ${tests.length} tests`,
          result: `${tests.length - good} not`,
        },
      ],
      sources: [SOURCE, sourceOf(inputs.notice)],
      notes: waiting
        ? undefined
        : dueSoon(tests, file, inputs).map(({ subject, found }) => `${subject}: ${found}`),
    }
  },
})

interface TestOfLot {
  readonly lot: Lot
  readonly test: LotTest
}

function partOf({ lot, test }: TestOfLot, file: InstrumentFile): Part {
  const status = calibrationStatus(test.instrumentId, test.testedOn, file)
  const common = {
    subject: `lot ${lot.code}, ${methodName(test.method)} of ${test.testedOn}`,
    about: { ...aboutLot(lot), method: test.method, testedOn: test.testedOn },
    measured: calibrationMeasured(status),
  }
  if (status.stands) {
    return { ...common, verdict: 'meets', found: `${status.instrument.tag} was in calibration.` }
  }
  const repeated = lot.tests.some(
    (other) =>
      other !== test &&
      other.method === test.method &&
      other.testedOn >= test.testedOn &&
      calibrationStatus(other.instrumentId, other.testedOn, file).stands,
  )
  if (repeated) {
    return { ...common, verdict: 'meets', found: `${status.message}; set aside and repeated in calibration.` }
  }
  if (!isUsable(lot)) {
    return {
      ...common,
      verdict: 'not applicable',
      found: `${status.message}; the lot was rejected and rests on no result.`,
    }
  }
  return {
    ...common,
    verdict: status.proven ? 'fails' : 'undetermined',
    found: `${status.message}.`,
    remedy: {
      message: status.proven
        ? 'Repeat the test with an instrument in calibration; the earlier result is kept and set aside.'
        : 'Record the calibration that covers the date, or repeat the test with an instrument in calibration.',
    },
  }
}

/** Instruments that were used, are still in use, and run out within the notice. */
function dueSoon(
  tests: readonly TestOfLot[],
  file: InstrumentFile,
  { notice, today: now }: { readonly notice: { readonly value: number }; readonly today: string },
): Part[] {
  const used = new Set(tests.map(({ test }) => test.instrumentId))
  return [...byId(file.instruments).values()]
    .filter((instrument) => used.has(instrument.id) && !instrument.outOfUse)
    .map((instrument) => ({ instrument, margin: daysLeft(instrument, notice.value, now) }))
    .filter(({ margin }) => verdictOn(margin) !== 'meets')
    .map(({ instrument, margin }) => ({
      subject: instrument.tag,
      about: { instrument: instrument.tag },
      verdict: 'marginal' as const,
      measured: { dueOn: instrument.dueOn },
      found:
        margin.found < 0
          ? `ran out of calibration on ${instrument.dueOn}: not to be used until calibrated.`
          : `due on ${instrument.dueOn}, in ${formatNumber(margin.found)} days.`,
      margin,
      remedy: { message: `Have ${instrument.tag} calibrated before the next test.` },
    }))
}

const daysLeft = ({ dueOn }: Instrument, noticeDays: number, now: string): Margin => ({
  found: daysBetween(now, dueOn),
  limit: 0,
  unit: 'days',
  direction: 'at least',
  guardBand: noticeDays,
})
