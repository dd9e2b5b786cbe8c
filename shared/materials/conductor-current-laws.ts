import { fromMemory, published } from '@/shared/sources/provenance'

/** I = k · ΔT^0.44 · A^0.725, with I in amperes, ΔT in kelvin, A in square mils. */
export const IPC_2221_CURRENT = {
  factor: { external: 0.048, internal: 0.024 },
  riseExponent: 0.44,
  areaExponent: 0.725,
  /** Beyond these the chart the fit was made from ends. */
  maxCurrentA: { external: 35, internal: 17.5 },
  maxRiseK: 100,
  maxWidthMil: 400,
  source: published('IPC-2221, Figure 6-4, as the source of KiCad fits it'),
} as const

/** One fit ΔT = K · I^a · W^b · T^c, with W and T in mils. */
export interface RiseFit {
  readonly factor: number
  readonly currentExponent: number
  readonly widthExponent: number
  readonly thicknessExponent: number
}

/** Fits to the measurements behind IPC-2152; internal ones by weight of copper. */
export const IPC_2152_RISE = {
  external: { factor: 215.3, currentExponent: 2, widthExponent: -1.15, thicknessExponent: -1 },
  internal: [
    {
      upToOunces: 0.75,
      ounces: 0.5,
      factor: 120,
      currentExponent: 2,
      widthExponent: -1.1,
      thicknessExponent: -1.52,
    },
    {
      upToOunces: 1.5,
      ounces: 1,
      factor: 200,
      currentExponent: 1.9,
      widthExponent: -1.1,
      thicknessExponent: -1.52,
    },
    {
      upToOunces: 2.5,
      ounces: 2,
      factor: 300,
      currentExponent: 2,
      widthExponent: -1.15,
      thicknessExponent: -1.52,
    },
    {
      upToOunces: Infinity,
      ounces: 3,
      factor: 262.5,
      currentExponent: 1.9,
      widthExponent: -1.15,
      thicknessExponent: -1.52,
    },
  ],
  source: published(
    'Brooks & Adam, PCB Design Guide to Via and Trace Currents and Temperatures (2015): fits to IPC-2152',
  ),
} as const satisfies {
  external: RiseFit
  internal: readonly (RiseFit & { upToOunces: number; ounces: number })[]
  source: unknown
}

/** Thickness of one ounce of copper per square foot, mils, as the current laws count it. */
export const MILS_PER_OUNCE = 1.378

/** Copper's resistance: value at 20 °C and how it rises. */
export const COPPER_RESISTANCE = {
  resistivityOhmM: 1.724e-8,
  perKelvin: 0.00393,
  referenceC: 20,
  source: fromMemory('IEC 60028: annealed copper, 1.7241 µΩ·cm and 0.00393/K at 20 °C'),
} as const
