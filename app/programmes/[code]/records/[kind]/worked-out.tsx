import { agreementAddress, inspectionsAddress, residueAddress, reworkAddress } from '@/app/addresses'

interface WorkedOut {
  readonly says: string
  readonly address: (code: string) => string
}

const RESIDUE: WorkedOut = { says: 'Residue and insulation', address: residueAddress }
const REWORK: WorkedOut = { says: 'Rework and sections', address: reworkAddress }

/** Where the records of a kind are drawn and worked out, if they are anywhere. */
const WORKED_OUT: Readonly<Record<string, WorkedOut>> = {
  'flux-removal': RESIDUE,
  'ionic-cleanliness': RESIDUE,
  'insulation-resistance': RESIDUE,
  'inspector-call': { says: 'Agreement of inspectors', address: agreementAddress },
  'electrical-test': { says: 'Defects, rates and yields', address: inspectionsAddress },
  rework: REWORK,
  microsection: REWORK,
}

/** A way from the bare records to what follows from them. */
export function WorkedOutAt({ code, kind }: { code: string; kind: string }) {
  const place = WORKED_OUT[kind]
  if (!place) return null
  return (
    <p>
      What follows from these records: <a href={place.address(code)}>{place.says}</a>.
    </p>
  )
}
