import { published } from '@/shared/sources/provenance'

/** The two issues whose numbers are most often mixed up. */
export const HANDBOOK_REVISIONS = ['Notice 2, 1995', 'base issue, 1991'] as const
export type HandbookRevision = (typeof HANDBOOK_REVISIONS)[number]

const connections = published('MIL-HDBK-217F (1991) and Notice 2 (1995), section 17.1')
const platedHoles = published('MIL-HDBK-217F (1991) and Notice 2 (1995), section 16.1')

/**
 * Base failure rates of single connections, failures per 10⁶ hours. There is no
 * row for wave soldering: wave-soldered plated holes are section 16.1.
 */
export const CONNECTION_BASE_RATES = [
  {
    kind: 'hand solder, not wrapped',
    'Notice 2, 1995': 0.0013,
    'base issue, 1991': 0.0026,
    source: connections,
  },
  {
    kind: 'hand solder, wrapped',
    'Notice 2, 1995': 0.00007,
    'base issue, 1991': 0.00014,
    source: connections,
  },
  { kind: 'crimp', 'Notice 2, 1995': 0.00026, 'base issue, 1991': 0.00026, source: connections },
  { kind: 'weld', 'Notice 2, 1995': 0.000015, 'base issue, 1991': 0.00005, source: connections },
  {
    kind: 'solderless wrap',
    'Notice 2, 1995': 0.0000068,
    'base issue, 1991': 0.0000035,
    source: connections,
  },
  { kind: 'clip termination', 'Notice 2, 1995': 0.00012, 'base issue, 1991': 0.00012, source: connections },
  { kind: 'reflow solder', 'Notice 2, 1995': 0.000069, 'base issue, 1991': 0.000069, source: connections },
] as const
export type ConnectionKind = (typeof CONNECTION_BASE_RATES)[number]['kind']

/** Base failure rates of a plated through hole with its joint, failures per 10⁶ hours. */
export const PLATED_HOLE_BASE_RATES = [
  { board: 'printed wiring', 'Notice 2, 1995': 0.000017, 'base issue, 1991': 0.000041, source: platedHoles },
  { board: 'discrete wiring', 'Notice 2, 1995': 0.00011, 'base issue, 1991': 0.00026, source: platedHoles },
] as const
export type WiringKind = (typeof PLATED_HOLE_BASE_RATES)[number]['board']

/** Environment factors, with the handbook's letters. */
export const ENVIRONMENT_FACTORS = [
  { letters: 'GB', name: 'ground, benign', connection: 1, platedHole: 1 },
  { letters: 'GF', name: 'ground, fixed', connection: 2, platedHole: 2 },
  { letters: 'GM', name: 'ground, mobile', connection: 7, platedHole: 7 },
  { letters: 'NS', name: 'naval, sheltered', connection: 4, platedHole: 5 },
  { letters: 'NU', name: 'naval, unsheltered', connection: 11, platedHole: 13 },
  { letters: 'AIC', name: 'airborne, inhabited, cargo', connection: 4, platedHole: 5 },
  { letters: 'AIF', name: 'airborne, inhabited, fighter', connection: 6, platedHole: 8 },
  { letters: 'AUC', name: 'airborne, uninhabited, cargo', connection: 6, platedHole: 16 },
  { letters: 'AUF', name: 'airborne, uninhabited, fighter', connection: 8, platedHole: 28 },
  { letters: 'ARW', name: 'airborne, rotary wing', connection: 16, platedHole: 19 },
  { letters: 'SF', name: 'space, flight', connection: 0.5, platedHole: 0.5 },
  { letters: 'MF', name: 'missile, flight', connection: 9, platedHole: 10 },
  { letters: 'ML', name: 'missile, launch', connection: 24, platedHole: 27 },
  { letters: 'CL', name: 'cannon, launch', connection: 420, platedHole: 500 },
] as const
export type EnvironmentLetters = (typeof ENVIRONMENT_FACTORS)[number]['letters']
/** Of the factors; the names of the environments are from memory. */
export const ENVIRONMENT_SOURCE = published('MIL-HDBK-217F sections 16.1 and 17.1, environment factors')
