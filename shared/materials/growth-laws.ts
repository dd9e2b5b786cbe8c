import { commonPractice, computed, fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** Parabolic growth of compound between tin and copper: x² = x₀² + k·t, ln k = a − b/T (µm²/h, K). */
export interface GrowthLaw {
  readonly label: string
  /** As it stands at a line in a chart. */
  readonly short: string
  readonly lnFactor: number
  readonly perKelvin: number
  /** Whether its author can be followed: only then may it decide. */
  readonly attributed: boolean
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

const TIN_SILVER_PAPER =
  'J.-W. Yoon and others, “Reaction diffusions of Cu6Sn5 and Cu3Sn intermetallic compound in the couple of Sn-3.5Ag eutectic solder and copper substrate”, Metals and Materials International 9 (2003), 193–199, DOI 10.1007/BF03027277'

/** Energies of one published series on copper, 70 to 200 °C, kJ/mol. */
export const TIN_SILVER_ENERGIES = {
  cu6sn5KjMol: 55.4,
  totalKjMol: 65.4,
  source: published(`${TIN_SILVER_PAPER}: 55.4 kJ/mol for Cu₆Sn₅, 65.4 kJ/mol for all compound`),
} as const

/** The highest energy published for Cu₆Sn₅ on copper, kJ/mol. */
export const HIGHEST_ENERGY = {
  kjMol: 127.9,
  source: published(
    'J.-W. Yoon, C.-B. Lee and S.-B. Jung, “Interfacial reactions between Sn-58 mass% Bi eutectic solder and (Cu, electroless Ni-P/Cu) substrate”, Materials Transactions 43 (2002), 1821–1826: 127.9 kJ/mol for Cu₆Sn₅, 70 to 120 °C',
  ),
} as const

const PLATED_TIN_UM = 0.635
const PLATED_TIN_H = 4 * 7 * 24
const plated = (energyKjMol: number) => throughPoint(energyKjMol, 25, PLATED_TIN_UM ** 2 / PLATED_TIN_H)
const PLATED_TIN_SOURCE = published(
  `Copper Development Association, connector design guide, “Time: compounds”: about 25 µin of compound after four weeks without warmth on electroplated tin; energies: ${TIN_SILVER_PAPER}`,
)
/** 9 µm of compound in all after 60 days at 150 °C. */
const AGED = throughPoint(TIN_SILVER_ENERGIES.totalKjMol, 150, 9 ** 2 / (60 * 24))

/**
 * Sets measured in different ways, with the spread between published activation
 * energies. A store is judged by the fastest of those whose authors can be
 * followed; the others only show how far the sets lie apart.
 */
export const GROWTH_LAWS = {
  /** 0.635 µm in four weeks at room temperature, carried to other temperatures by the lowest published energy. */
  'electroplated-tin': {
    label: 'Electroplated tin at room temperature: 0.635 µm in 4 weeks, 55.4 kJ/mol',
    short: 'plated tin, 55 kJ',
    ...plated(TIN_SILVER_ENERGIES.cu6sn5KjMol),
    attributed: true,
    source: PLATED_TIN_SOURCE,
  },
  /** The same layer carried by the energy of all compound: faster in a warm store. */
  'electroplated-tin-warm': {
    label: 'Electroplated tin at room temperature: 0.635 µm in 4 weeks, 65.4 kJ/mol',
    short: 'plated tin, 65 kJ',
    ...plated(TIN_SILVER_ENERGIES.totalKjMol),
    attributed: true,
    source: PLATED_TIN_SOURCE,
  },
  aged: {
    label: 'Aged tin-silver on copper: 9 µm after 60 days at 150 °C, 65.4 kJ/mol',
    short: 'aged, 65 kJ',
    ...AGED,
    attributed: true,
    source: published(`${TIN_SILVER_PAPER}: 9 µm after 60 days at 150 °C`),
  },
  /** Decides nothing: nobody can be found who stands for it. */
  fitted: {
    label: 'Fit to aged solder on copper, author not known, 56.4 kJ/mol',
    short: 'fit, 56 kJ',
    lnFactor: 14.81,
    perKelvin: 6784.7,
    attributed: false,
    source: fromMemory('ln k = 14.81 − 6784.7/T (µm²/h, K), a fit in circulation whose author was not found'),
  },
  /** The highest published energy, pinned to the aged layers at 120 °C, where both were measured. */
  'highest-energy': {
    label: 'Highest published energy, 127.9 kJ/mol, meeting the aged layers at 120 °C',
    short: '128 kJ',
    ...throughPoint(HIGHEST_ENERGY.kjMol, 120, Math.exp(AGED.lnFactor - AGED.perKelvin / 393.15)),
    attributed: true,
    source: HIGHEST_ENERGY.source,
  },
} as const satisfies Record<string, GrowthLaw>

/** Compound stands up in peaks: solderability goes where these come through, not where its mean does. */
export const PEAK_FACTOR = {
  value: 1.5,
  source: commonPractice('Peaks of compound stand about half as high again as its mean thickness'),
} as const

/** Metals under tin other than copper, and how the laws above stand to them. */
export const GROWTH_UNDER = {
  'iron-nickel': {
    source: fromMemory(
      'FeSn₂ on iron with 42 % nickel grows several times more slowly than Cu₆Sn₅ on copper; no full set of constants is published',
    ),
  },
} as const

/** Compound that a coating has already when it is made, µm. */
export const FIRST_COMPOUND_UM = {
  plated: { value: 0, source: computed('A plated coating starts without compound') },
  dipped: {
    value: 1,
    source: published(
      'Hot-dipped tin: 0.51 to 1.02 µm of compound as made (Copper Development Association, connector design guide, “Copper-tin compounds”)',
    ),
  },
} as const
