import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { HoleGroup } from '../hole-groups'

/** A row as far as the files know it: what they cannot know is left for the person. */
export type ProposedLeadHole = Partial<LeadHole>

/** How near sizes must be for a row of before to be the same holes, mm. */
const SAME_MM = 0.02
const COMPONENT_LENGTH = 60

/**
 * The table of holes and leads as the board's files have it: one row a group of
 * component holes. A row of before with the same hole and land keeps its lead and
 * whatever else was typed, and takes the number of joints from the files.
 */
export function proposedLeadHoles(
  groups: readonly HoleGroup[],
  before: readonly LeadHole[],
): ProposedLeadHole[] {
  const left = new Set(before)
  return groups
    .filter(({ kind, landMm }) => kind === 'component' && landMm !== undefined)
    .map((group) => {
      const known = [...left].find((row) => isSame(row, group))
      if (known) left.delete(known)
      const measured: ProposedLeadHole = {
        joints: group.holes.length,
        plated: group.plated ?? true,
        holeMm: toMicrometre(group.diameterMm),
        landMm: toMicrometre(group.landMm!),
      }
      return known ? { ...known, ...measured } : { component: componentsInBrief(group), ...measured }
    })
}

const isSame = (row: LeadHole, { diameterMm, landMm, plated }: HoleGroup): boolean =>
  Math.abs(row.holeMm - diameterMm) <= SAME_MM &&
  Math.abs(row.landMm - landMm!) <= SAME_MM &&
  (plated === undefined || row.plated === plated)

const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000

/** Designators as far as a cell holds them whole; else the size, which tells the row from the others. */
function componentsInBrief({ components, diameterMm, landMm }: HoleGroup): string {
  const all = components.join(', ')
  return all !== '' && all.length <= COMPONENT_LENGTH
    ? all
    : `Holes ${toMicrometre(diameterMm)} mm, land ${toMicrometre(landMm!)} mm`
}
