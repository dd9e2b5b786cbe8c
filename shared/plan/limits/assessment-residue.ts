import { fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What may be left of the flux, and what insulation has to hold. */

export const ionicResidueMax = limit({
  key: 'ionic-residue-most',
  label: 'Ionic residue as sodium chloride',
  unit: 'µg/cm²',
  direction: 'at most',
  byDefault: {
    value: 1.55,
    authority: 'standard',
    from: fromMemory('NASA-STD-8739.3, solvent extract: 1.55 µg/cm² (10.0 µg/in²); the strictest in use'),
  },
})

/** The same limit by edition. The newest issues name no figure: they ask for evidence of one's own. */
export const IONIC_RESIDUE_BY_EDITION = {
  'nasa-8739': ionicResidueMax.byDefault,
  'j-std-001': {
    value: 1.56,
    authority: 'standard',
    from: fromMemory('J-STD-001 before its amendment of 2018, MIL-P-28809: 1.56 µg/cm² (10.06 µg/in²)'),
  },
} as const

export const insulationResistanceMin = limit({
  key: 'insulation-resistance-least',
  label: 'Surface insulation resistance in damp heat',
  unit: 'MΩ',
  direction: 'at least',
  byDefault: {
    value: 100,
    authority: 'standard',
    from: fromMemory('J-STD-004, surface insulation resistance: at least 100 MΩ'),
  },
})
