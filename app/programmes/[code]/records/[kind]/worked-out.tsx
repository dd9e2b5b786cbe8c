import {
  agreementAddress,
  assembliesAddress,
  costAddress,
  defectChartsAddress,
  gaugesAddress,
  inspectionsAddress,
  logsAddress,
  lotsAddress,
  reliabilityAddress,
  residueAddress,
  reworkAddress,
} from '@/app/addresses'
import type { RecordKindKey } from '@/shared/records/record-kinds'

interface WorkedOut {
  readonly message: string
  readonly address: (code: string) => string
}

const RESIDUE: WorkedOut = { message: 'Residue and insulation', address: residueAddress }
const GAUGES: WorkedOut = { message: 'Instruments in use', address: gaugesAddress }
const RELIABILITY: WorkedOut = { message: 'Reliability', address: reliabilityAddress }
const REWORK: WorkedOut = { message: 'Rework desk and sections', address: reworkAddress }

const NOWHERE = undefined

/** Where the records of each kind are drawn and worked out, beside the findings that read them. */
const WORKED_OUT: Readonly<Record<RecordKindKey, WorkedOut | undefined>> = {
  calibration: GAUGES,
  'chart-reset': { message: 'Logs and their charts', address: logsAddress },
  'defect-signal-answer': { message: 'Defect control charts', address: defectChartsAddress },
  'electrical-test': { message: 'Defects, rates and yields', address: inspectionsAddress },
  'field-exposure': RELIABILITY,
  'field-return': RELIABILITY,
  'flux-removal': RESIDUE,
  'gauge-reading': GAUGES,
  'inspector-call': { message: 'Agreement of inspectors', address: agreementAddress },
  'insulation-resistance': RESIDUE,
  'ionic-cleanliness': RESIDUE,
  'lead-forming': NOWHERE,
  'life-test': RELIABILITY,
  microsection: REWORK,
  'moisture-exposure': NOWHERE,
  'quality-cost': { message: 'Cost', address: costAddress },
  're-inspection': REWORK,
  rework: REWORK,
  'signal-answer': { message: 'Logs and their charts', address: logsAddress },
  'soldering-run': { message: 'Assemblies and the lots in them', address: assembliesAddress },
  'supplier-action': { message: 'Every supplier’s series, lot by lot', address: lotsAddress },
  training: NOWHERE,
}

/** A way from the bare records to what follows from them. */
export function WorkedOutAt({ code, kind }: { code: string; kind: RecordKindKey }) {
  const place = WORKED_OUT[kind]
  if (!place) return null
  return (
    <p>
      What follows from these records: <a href={place.address(code)}>{place.message}</a>.
    </p>
  )
}
