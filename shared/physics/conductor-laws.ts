import {
  currentByIpc2152,
  currentByIpc2221,
  riseByIpc2152,
  riseByIpc2221,
  widthByIpc2152,
  widthByIpc2221,
  type Conductor,
} from './conductor-current'

/** The two fits by which a conductor is judged for its current. */
export const CONDUCTOR_LAWS = {
  'ipc-2221': { label: 'IPC-2221', rise: riseByIpc2221, current: currentByIpc2221, width: widthByIpc2221 },
  'ipc-2152': { label: 'IPC-2152', rise: riseByIpc2152, current: currentByIpc2152, width: widthByIpc2152 },
} as const
export type ConductorLaw = keyof typeof CONDUCTOR_LAWS

/** The laws that apply: the one that is chosen, else both. */
export const lawsFor = (chosen: ConductorLaw | undefined): readonly ConductorLaw[] =>
  chosen ? [chosen] : ['ipc-2221', 'ipc-2152']

/** The law that gives the greatest rise at the current. */
export const hottestLaw = (
  conductor: Conductor,
  currentA: number,
  laws: readonly ConductorLaw[],
): ConductorLaw =>
  laws.reduce((worst, law) =>
    CONDUCTOR_LAWS[law].rise(conductor, currentA) > CONDUCTOR_LAWS[worst].rise(conductor, currentA)
      ? law
      : worst,
  )
