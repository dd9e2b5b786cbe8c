import {
  fluxControlMethod,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxSolids,
} from '@/shared/plan/parameters/control-flux'
import { set } from '../facts-builder'

/** Flux held by its density: 0.82 g/ml at 25 °C, to either side by a hundredth. */
export const densitySpecified = [
  set(fluxControlMethod, 'density'),
  set(fluxSolids, 18),
  set(fluxDensityTarget, 0.82),
  set(fluxDensityTolerance, 0.01),
]

/** A row of the log of flux density, on target unless told. */
export const densityRead = (at: string, densityGPerMl = 0.82) => ({ at, densityGPerMl, temperatureC: 25 })
