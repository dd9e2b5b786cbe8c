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
  readonly says: string
  readonly address: (code: string) => string
}

const RESIDUE: WorkedOut = { says: 'Residue and insulation', address: residueAddress }
const GAUGES: WorkedOut = { says: 'Instruments in use', address: gaugesAddress }
const RELIABILITY: WorkedOut = { says: 'Reliability', address: reliabilityAddress }
const REWORK: WorkedOut = { says: 'Rework and sections', address: reworkAddress }

const NOWHERE = undefined

/** Where the records of each kind are drawn and worked out, beside the findings that read them. */
const WORKED_OUT: Readonly<Record<RecordKindKey, WorkedOut | undefined>> = {
  calibration: GAUGES,
  'defect-signal-answer': { says: 'Defect control charts', address: defectChartsAddress },
  'electrical-test': { says: 'Defects, rates and yields', address: inspectionsAddress },
  'field-exposure': RELIABILITY,
  'field-return': RELIABILITY,
  'flux-removal': RESIDUE,
  'gauge-reading': GAUGES,
  'inspector-call': { says: 'Agreement of inspectors', address: agreementAddress },
  'insulation-resistance': RESIDUE,
  'ionic-cleanliness': RESIDUE,
  'lead-forming': NOWHERE,
  'life-test': RELIABILITY,
  microsection: REWORK,
  'moisture-exposure': NOWHERE,
  'quality-cost': { says: 'Cost', address: costAddress },
  rework: REWORK,
  'signal-answer': { says: 'Logs and their charts', address: logsAddress },
  'soldering-run': { says: 'Assemblies and the lots in them', address: assembliesAddress },
  'supplier-action': { says: 'Every supplier’s series, lot by lot', address: lotsAddress },
  training: NOWHERE,
}

/** A way from the bare records to what follows from them. */
export function WorkedOutAt({ code, kind }: { code: string; kind: RecordKindKey }) {
  const place = WORKED_OUT[kind]
  if (!place) return null
  return (
    <p>
      What follows from these records: <a href={place.address(code)}>{place.says}</a>.
    </p>
  )
}
