/**
 * How long a joint stays in the wave: contact length over conveyor speed.
 *
 * Units: mm, m/min; the result in s. Throws RangeError on a length or speed
 * that is not positive.
 * Source: definition; one wave only, where there are two each has its own.
 */
export function dwellS(contactLengthMm: number, conveyorSpeedMPerMin: number): number {
  if (!(contactLengthMm > 0)) throw new RangeError('The contact length must be greater than zero.')
  if (!(conveyorSpeedMPerMin > 0)) throw new RangeError('The conveyor speed must be greater than zero.')
  return (contactLengthMm * 60) / (conveyorSpeedMPerMin * 1000)
}

/** The conveyor speed that gives a dwell at a contact length; m/min from mm and s. */
export function conveyorSpeedFor(contactLengthMm: number, wantedS: number): number {
  if (!(contactLengthMm > 0)) throw new RangeError('The contact length must be greater than zero.')
  if (!(wantedS > 0)) throw new RangeError('The dwell must be greater than zero.')
  return (contactLengthMm * 60) / (wantedS * 1000)
}

/** The contact length that gives a dwell at a conveyor speed; mm from m/min and s. */
export function contactLengthFor(conveyorSpeedMPerMin: number, wantedS: number): number {
  if (!(conveyorSpeedMPerMin > 0)) throw new RangeError('The conveyor speed must be greater than zero.')
  if (!(wantedS > 0)) throw new RangeError('The dwell must be greater than zero.')
  return (wantedS * conveyorSpeedMPerMin * 1000) / 60
}
