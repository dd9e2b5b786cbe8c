import {
  IPC_2152_RISE,
  IPC_2221_CURRENT,
  MILS_PER_OUNCE,
  type RiseFit,
} from '@/shared/materials/conductor-current-laws'

export interface Conductor {
  readonly layer: 'external' | 'internal'
  readonly widthMm: number
  readonly copperUm: number
}

const mils = (mm: number): number => mm / 0.0254
const milsOf = (um: number): number => um / 25.4

const sectionMil2 = ({ widthMm, copperUm }: Conductor): number => mils(widthMm) * milsOf(copperUm)

/**
 * The current that heats a conductor by so many kelvin: k · ΔT^0.44 · A^0.725,
 * A in square mils. The internal factor is half the external one by decree.
 * Units: A, K, mm, µm. Source: fit to IPC-2221, Figure 6-4.
 */
export function currentByIpc2221(conductor: Conductor, riseK: number): number {
  requireConductor(conductor)
  const { factor, riseExponent, areaExponent } = IPC_2221_CURRENT
  return factor[conductor.layer] * riseK ** riseExponent * sectionMil2(conductor) ** areaExponent
}

/** The rise in kelvin at a current: the IPC-2221 fit turned round. */
export function riseByIpc2221(conductor: Conductor, currentA: number): number {
  requireConductor(conductor)
  requireCurrent(currentA)
  const { factor, riseExponent, areaExponent } = IPC_2221_CURRENT
  const unit = factor[conductor.layer] * sectionMil2(conductor) ** areaExponent
  return (currentA / unit) ** (1 / riseExponent)
}

/** The width in mm that carries a current at a rise: the IPC-2221 fit turned round. */
export function widthByIpc2221(
  conductor: Omit<Conductor, 'widthMm'>,
  currentA: number,
  riseK: number,
): number {
  requireCurrent(currentA)
  const { factor, riseExponent, areaExponent } = IPC_2221_CURRENT
  const areaMil2 = (currentA / (factor[conductor.layer] * riseK ** riseExponent)) ** (1 / areaExponent)
  return (areaMil2 / milsOf(conductor.copperUm)) * 0.0254
}

/**
 * The fit that IPC-2152 data give for a conductor. Inside the board there is
 * one a weight of copper; the nearest weight is taken.
 */
export function ipc2152Fit({ layer, copperUm }: Omit<Conductor, 'widthMm'>): RiseFit {
  if (layer === 'external') return IPC_2152_RISE.external
  const ounces = milsOf(copperUm) / MILS_PER_OUNCE
  return IPC_2152_RISE.internal.find((fit) => ounces <= fit.upToOunces) ?? IPC_2152_RISE.internal[3]
}

/**
 * The rise in kelvin at a current: K · I^a · W^b · T^c, W and T in mils.
 * Source: Brooks & Adam (2015), fits to the data of IPC-2152.
 */
export function riseByIpc2152(conductor: Conductor, currentA: number): number {
  requireConductor(conductor)
  requireCurrent(currentA)
  const { factor, currentExponent, widthExponent, thicknessExponent } = ipc2152Fit(conductor)
  return (
    factor *
    currentA ** currentExponent *
    mils(conductor.widthMm) ** widthExponent *
    milsOf(conductor.copperUm) ** thicknessExponent
  )
}

/** The current in amperes at a rise: the IPC-2152 fit turned round. */
export function currentByIpc2152(conductor: Conductor, riseK: number): number {
  const atOneAmpere = riseByIpc2152(conductor, 1)
  return (riseK / atOneAmpere) ** (1 / ipc2152Fit(conductor).currentExponent)
}

/** The width in mm that carries a current at a rise: the IPC-2152 fit turned round. */
export function widthByIpc2152(
  conductor: Omit<Conductor, 'widthMm'>,
  currentA: number,
  riseK: number,
): number {
  const atOneMil = riseByIpc2152({ ...conductor, widthMm: 0.0254 }, currentA)
  return 0.0254 * (riseK / atOneMil) ** (1 / ipc2152Fit(conductor).widthExponent)
}

function requireConductor({ widthMm, copperUm }: Conductor): void {
  if (!(widthMm > 0 && copperUm > 0)) {
    throw new RangeError('A conductor has a width and a thickness greater than zero.')
  }
}

function requireCurrent(currentA: number): void {
  if (!(currentA >= 0)) throw new RangeError('A current must not be negative here: give its size.')
}
