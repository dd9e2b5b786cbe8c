import { valueOf } from '@/app/pictures/value-of'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { magnificationFor } from '@/shared/materials/inspection-magnification'
import { boardJoints } from '@/shared/plan/board-joints'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Inspection } from '@/shared/records/inspection'
import { nextSerial } from '@/shared/inspection/next-serial'

/** What the next entry starts with, as its boxes show it. */
export interface Repeated {
  readonly assembly: string
  readonly inspectedOn: string
  readonly inspector: string
  readonly magnification: string
  readonly jointsSeen: string
  /** The entry that was just recorded, when this follows one. */
  readonly last: Inspection | undefined
}

/**
 * What stands again from the last assembly: its serial counted on past those
 * seen already, who looked, with what, at how many joints. At the start of a
 * day, the person signed in, today, and the joints of the board.
 */
export function repeatedFor(view: ProgrammeView, after: string | undefined): Repeated {
  const { inspections } = view.state.facts.records
  const last = after === undefined ? undefined : inspections.findLast(({ assembly }) => assembly === after)
  const seen = new Set(inspections.map(({ assembly }) => assembly))
  const holes = valueOf(view, leadHoles)
  const earlier = last ?? inspections.findLast(({ inspector }) => inspector === view.actor.name)
  const joints = holes && boardJoints(holes, valueOf(view, surfaceMountJoints)).total
  const power = holes && magnificationFor(Math.min(...holes.map(({ landMm }) => landMm))).max
  return {
    assembly: nextSerial((earlier ?? inspections.at(-1))?.assembly ?? '', seen),
    inspectedOn: last?.inspectedOn ?? view.state.facts.today,
    inspector: last?.inspector ?? view.actor.name,
    magnification: String(earlier?.magnification ?? power ?? ''),
    jointsSeen: String(earlier?.jointsSeen ?? joints ?? ''),
    last,
  }
}
