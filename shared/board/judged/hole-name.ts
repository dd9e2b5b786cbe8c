import type { BoardHole } from '../hole'
import { inMm } from './in-words'

/** A hole as people know it: by its pin, else by its net, else by its size. */
export function holeName({ component, pin, net, diameterMm }: BoardHole): string {
  const pinName = component === undefined ? undefined : [component, pin].filter(Boolean).join(' pin ')
  return pinName ?? net ?? `Hole of ${inMm(diameterMm)}`
}
