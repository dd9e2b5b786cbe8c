import { gaugeAddress } from '@/app/addresses'
import { Sign } from '@/app/ui/sign'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { distinctCategoriesMin, gaugeShareMax } from '@/shared/plan/limits/evaluation-instruments'
import { governingRequirement } from '@/shared/plan/requirement'
import { calibrationStatus } from '@/shared/instruments/calibration-status'
import type { LotTest } from '@/shared/records/lot'
import { needsInstrument } from '@/shared/methods/test-methods'
import { unfitGauges } from '@/shared/instruments/gauge-study'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** The instrument of a test, whether it was in calibration that day, and whether a study found it unfit. */
export function InstrumentThen({ view, test }: { view: ProgrammeView; test: LotTest }) {
  const { records, requirements } = view.state.facts
  if (test.instrumentId === null) return <>{needsInstrument(test.method) ? 'none named' : 'none needed'}</>
  const status = calibrationStatus(test.instrumentId, test.testedOn, {
    instruments: records.instruments,
    calibrations: recordsOfKind(records, 'calibration'),
  })
  const tag = status.instrument?.tag
  const study =
    tag &&
    unfitGauges(recordsOfKind(records, 'gauge-reading'), {
      maxSharePct: governingRequirement(gaugeShareMax, requirements).value,
      minCategories: governingRequirement(distinctCategoriesMin, requirements).value,
    }).get(tag)
  return (
    <>
      {tag && <a href={gaugeAddress(view.code, tag)}>{tag}</a>}
      {status.stands ? ', in calibration that day' : <Flag message={status.message} />}
      {study && <Flag message={`unfit by gauge study ${study}`} />}
    </>
  )
}

function Flag({ message }: { message: string }) {
  return (
    <span className="mark">
      <Sign kind="warning" size={16} />
      <strong>{message}</strong>
    </span>
  )
}
