import { ALLOYS } from '@/shared/materials/alloys'
import { FLUXES } from '@/shared/materials/fluxes'
import { optionsOf } from '@/shared/columns/choice-options'
import { dateColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import {
  choiceParameter,
  dateParameter,
  numberParameter,
  tableParameter,
  type ValueOf,
} from '@/shared/plan/parameter'

export const solderAlloy = choiceParameter({
  key: 'solder-alloy',
  label: 'Solder alloy',
  help: 'The alloy the joints are made of.',
  owner: 'design',
  options: optionsOf(ALLOYS),
})

export const flux = choiceParameter({
  key: 'flux',
  label: 'Flux',
  help: 'By its classification; the data sheet says which edition it was classified by.',
  owner: 'production',
  options: optionsOf(FLUXES),
})

export const fluxResidue = choiceParameter({
  key: 'flux-residue',
  label: 'Flux residue',
  help: 'Whether the residue stays on the board or is removed after soldering.',
  owner: 'design',
  options: [
    { value: 'stays', label: 'Stays' },
    { value: 'removed', label: 'Is removed' },
  ],
})

export const insulationNeeded = numberParameter({
  key: 'insulation-needed',
  label: 'Insulation the circuit needs',
  help: 'The least resistance between neighbouring conductors in service, as the circuit needs it. Asked for where the residue stays.',
  owner: 'design',
  unit: 'MΩ',
  min: 0.001,
  max: 1e7,
})

export const leadRestriction = choiceParameter({
  key: 'lead-restriction',
  label: 'Restriction of lead',
  help: 'Whether the equipment falls under law that restricts lead (such as 2011/65/EU). Ask whoever answers for it in law.',
  owner: 'design',
  options: [
    { value: 'restricted', label: 'Restricted: no lead above 0.1 %' },
    { value: 'exempt', label: 'An exemption in force is used' },
    { value: 'out-of-scope', label: 'Out of scope of the law' },
  ],
})

/** The exemptions that leaded materials rest on, each with the day on which it ends. */
export const leadExemptions = tableParameter({
  key: 'lead-exemptions',
  label: 'Exemptions used',
  help: 'Only where an exemption in force is used: which, for what, and its last day as the law has it now. A renewal that is only applied for is no date.',
  owner: 'design',
  maxRows: 20,
  columns: {
    exemption: textColumn({ label: 'Exemption', maxLength: 40, help: 'As the law numbers it.' }),
    covers: textColumn({ label: 'Used for', maxLength: 160 }),
    expiresOn: optionalColumn(dateColumn({ label: 'Last day', mayLieAhead: true })),
  },
})
export type LeadExemption = ValueOf<typeof leadExemptions>[number]

export const deliveriesUntil = dateParameter({
  key: 'deliveries-until',
  label: 'Deliveries planned until',
  help: 'The last day on which a board is to be placed on the market. An exemption must last until then.',
  owner: 'design',
})
