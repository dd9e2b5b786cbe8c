import { computed, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** Parabolic growth of compound between tin and copper: x² = x₀² + k·t, ln k = a − b/T (µm²/h, K). */
export interface GrowthLaw {
  readonly label: string
  /** As it stands at a line in a chart. */
  readonly short: string
  readonly lnFactor: number
  readonly perKelvin: number
  readonly source: Source
}

/** ln k for growth constant in µm²/h; perKelvin is energy over the gas constant. */
const throughPoint = (
  energyKjMol: number,
  atC: number,
  growthUm2h: number,
): Pick<GrowthLaw, 'lnFactor' | 'perKelvin'> => {
  const perKelvin = (energyKjMol * 1e3) / GAS_CONSTANT
  return { perKelvin, lnFactor: Math.log(growthUm2h) + perKelvin / (atC + 273.15) }
}

/** J/(mol·K) */
export const GAS_CONSTANT = 8.314462618

/** Fitted to layers on copper aged from 70 to 170 °C; its author holds it good to a factor of two in thickness. */
const FITTED: GrowthLaw = {
  label: 'Fit to aged solder on copper, 56.4 kJ/mol',
  short: 'aged, 56 kJ',
  lnFactor: 14.81,
  perKelvin: 6784.7,
  source: published(
    'Fit to the data of Siewert et al. (NIST), ln k = 14.81 − 6784.7/T; good to a factor of two',
  ),
}

/**
 * Two sets measured in different ways, and the spread between published
 * activation energies. A store is judged by the fastest.
 */
export const GROWTH_LAWS = {
  fitted: FITTED,
  /** 0.635 µm in four weeks at room temperature, carried to other temperatures by the lowest published energy. */
  'electroplated-tin': {
    label: 'Electroplated tin at room temperature: 0.635 µm in 4 weeks, 56.4 kJ/mol',
    short: 'plated tin',
    ...throughPoint(56.41, 25, 0.635 ** 2 / (4 * 7 * 24)),
    source: published(
      'Copper Development Association: 0.635 µm in 4 weeks at room temperature on electroplated tin; energy of the fit',
    ),
  },
  /** The highest published energy, pinned to the fit at 125 °C where both were measured hot. */
  'highest-energy': {
    label: 'Highest published energy, 127.9 kJ/mol, meeting the fit at 125 °C',
    short: '128 kJ',
    ...throughPoint(127.9, 125, Math.exp(14.81 - 6784.7 / 398.15)),
    source: published(
      'Activation energies from 56 to 128 kJ/mol for Cu₆Sn₅ on copper (solder on copper, 70 to 170 °C, abstracts)',
    ),
  },
} as const satisfies Record<string, GrowthLaw>

/** The fit's own uncertainty: layers up to twice as thick, so four times the growth constant. */
export const FIT_THICKNESS_FACTOR = {
  value: 2,
  source: published('The author of the fit holds it good to a factor of two'),
} as const

/** Compound that a coating has already when it is made, µm. */
export const FIRST_COMPOUND_UM = {
  plated: { value: 0, source: computed('A plated coating starts without compound') },
  dipped: {
    value: 1,
    source: published('Hot-dipped tin: 0.51 to 1.02 µm of compound as made (Copper Development Association)'),
  },
} as const
