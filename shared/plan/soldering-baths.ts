import type { ValueOf } from '@/shared/plan/parameter'
import type { solderingProcess } from '@/shared/plan/parameters/soldering-process'

export type Process = ValueOf<typeof solderingProcess>

/** True when the machine process keeps a bath of molten solder. */
export const keepsBath = (process: Process | undefined): boolean =>
  process === undefined || process === 'wave' || process === 'dip' || process === 'selective'

/** True when boards pass over a wave. */
export const passesWave = (process: Process | undefined): boolean =>
  process === undefined || process === 'wave'

/** Said wherever hot solder is worked with. */
export const HOT_SOLDER_CAUTIONS = [
  'Molten solder burns and spits when anything damp meets it: face shield, gloves, dry tools.',
  'Solder fume and lead: extraction at the source, no food at the bench, hands washed; the limits of the local authority and the safety data sheet rule.',
] as const
