import { AGEING_METHODS } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceColumn, numberColumn } from '@/shared/columns/column'

/**
 * What every solderability result must say of itself, or it cannot be set
 * beside another: solder, flux, bath temperature, ageing.
 */
export const solderabilityConditions = {
  alloy: choiceColumn({ label: 'Test solder', options: optionsOf(TEST_SOLDERS) }),
  flux: choiceColumn({ label: 'Test flux', options: optionsOf(TEST_FLUXES) }),
  bathTemperatureC: numberColumn({
    label: 'Bath temperature',
    unit: '°C',
    min: 180,
    max: 320,
    help: 'As measured in the bath during the test.',
  }),
  ageing: choiceColumn({ label: 'Ageing before the test', options: optionsOf(AGEING_METHODS) }),
}

/** How a surface met the solder. Each is recorded apart: they have different causes. */
export const wettingOutcomeColumn = choiceColumn({
  label: 'Outcome',
  options: [
    { value: 'wetted', label: 'Wetted' },
    { value: 'non-wetting', label: 'Non-wetting: the solder never took' },
    { value: 'dewetting', label: 'Dewetting: the solder took, then drew back' },
  ],
})

/** Hazards common to every test with molten solder. */
export const moltenSolderCautions = [
  'Molten solder burns and spits when wet: face shield, gloves, dry specimens and tongs; nobody reaches over the bath.',
  'Flux fume is a respiratory sensitiser: test under extraction.',
  'Tin-lead solder and its dross contain lead: no food or drink at the bench, hands washed, dross kept as hazardous waste.',
  'Alcohol in flux is flammable: keep it away from the bath. Local codes, the supplier’s safety sheets and the site’s safety officer decide.',
] as const
