import { HUMIDITY_MODELS, humidityFactor } from '@/shared/physics/acceleration-factor'
import type { Climate } from '@/shared/physics/acceleration-factor'

export interface HumidityRange {
  readonly min: number
  readonly max: number
  readonly byModel: readonly { readonly label: string; readonly factor: number }[]
  readonly caution: string
}

/**
 * Acceleration by heat and moisture as the range that two parameter sets in wide
 * use give: neither is right enough to stand alone. Temperatures in °C, relative
 * humidity in %.
 */
export function humidityFactorRange(climates: { use: Climate; test: Climate }): HumidityRange {
  const byModel = HUMIDITY_MODELS.map((model) => ({
    label: model.label,
    factor: humidityFactor(model, climates),
  }))
  const factors = byModel.map(({ factor }) => factor)
  return {
    min: Math.min(...factors),
    max: Math.max(...factors),
    byModel,
    caution:
      'Both sets were fitted to aluminium corroding in plastic packages: not for fatigue of joints, nor for loss of solderability.',
  }
}
