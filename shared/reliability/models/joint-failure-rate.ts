import { requireCount } from '@/shared/statistics/argument-checks'
import { CONNECTION_BASE_RATES, ENVIRONMENT_FACTORS, PLATED_HOLE_BASE_RATES } from './connection-rates'
import type { ConnectionKind, EnvironmentLetters, HandbookRevision, WiringKind } from './connection-rates'
import type { FailureRate, ReliabilityModel } from './model'

const FIT_PER_FAILURE_PER_MILLION_HOURS = 1000

const CAUTION =
  'A constant rate counts random failures only: neither fatigue of the solder nor poor workmanship. ' +
  'Other published models differ by orders of magnitude.'

/**
 * Failure rate of one connection: base rate × environment. The base issue's
 * further factor of 1 to 20 for the quality of crimps is not applied.
 * Source: MIL-HDBK-217F section 17.1.
 */
export function connectionFailureRate(
  kind: ConnectionKind,
  environment: EnvironmentLetters,
  revision: HandbookRevision,
): FailureRate {
  const row = CONNECTION_BASE_RATES.find((candidate) => candidate.kind === kind)!
  return {
    fit: row[revision] * factors(environment).connection * FIT_PER_FAILURE_PER_MILLION_HOURS,
    model: handbookModel('section 17.1', revision, row.source),
  }
}

export interface PlatedHoleBoard {
  readonly wiring: WiringKind
  /** Holes soldered by machine (wave, infrared, vapour phase), and by hand. */
  readonly machineSoldered: number
  readonly handSoldered: number
  readonly circuitPlanes: number
  /** Made to a military specification or the top class of the industry's; else the rate doubles. */
  readonly topQuality: boolean
}

/**
 * Failure rate of all plated holes of a board with their joints. A hole soldered
 * by hand weighs (πC + 13)/πC of one soldered by machine: 14 at two planes.
 * Throws RangeError outside 1 to 18 planes. Source: MIL-HDBK-217F section 16.1.
 */
export function platedHolesFailureRate(
  board: PlatedHoleBoard,
  environment: EnvironmentLetters,
  revision: HandbookRevision,
): FailureRate {
  requireCount(board.machineSoldered, 'number of holes soldered by machine')
  requireCount(board.handSoldered, 'number of holes soldered by hand')
  const row = PLATED_HOLE_BASE_RATES.find((candidate) => candidate.board === board.wiring)!
  const complexity = board.wiring === 'discrete wiring' ? 1 : complexityFactor(board.circuitPlanes)
  const weighted = board.machineSoldered * complexity + board.handSoldered * (complexity + 13)
  const quality = board.topQuality ? 1 : 2
  const perMillionHours = row[revision] * weighted * quality * factors(environment).platedHole
  return {
    fit: perMillionHours * FIT_PER_FAILURE_PER_MILLION_HOURS,
    model: handbookModel('section 16.1', revision, row.source),
  }
}

/** πC for so many circuit planes: 1 up to two, then 0.65 · P^0.63; the handbook prints it to one decimal. */
export function complexityFactor(circuitPlanes: number): number {
  requireCount(circuitPlanes, 'number of circuit planes', 1)
  if (circuitPlanes > 18)
    throw new RangeError(`The handbook's plane factor ends at 18 circuit planes; ${circuitPlanes} given.`)
  return circuitPlanes <= 2 ? 1 : 0.65 * circuitPlanes ** 0.63
}

const factors = (letters: EnvironmentLetters) =>
  ENVIRONMENT_FACTORS.find((environment) => environment.letters === letters)!

const handbookModel = (
  section: string,
  edition: HandbookRevision,
  source: ReliabilityModel['source'],
): ReliabilityModel => ({ name: `MIL-HDBK-217F ${section}`, edition, source, caution: CAUTION })
