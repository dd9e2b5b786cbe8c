import type { Story } from '@/seed/story'

/** The one line of the invented works, on which all three boards are made, and what stands on it. */
export const LINE = 'Line 1'
const MACHINES = [
  ['Foam fluxer', 'fluxer'],
  ['Wave 1', 'wave'],
  ['Bench 3', 'bench'],
  ['Board store', 'store'],
] as const

/** Who delivers what the boards are made of. */
export const SUPPLIERS = [
  'Northgate Circuits',
  'Calloway Boards',
  'Ostrava Wound Parts',
  'Calder Passives',
  'Meridian Semi',
  'Brandt & Lowe Fluxes',
] as const

/** Opens the line and its machines, and adds the suppliers, once for all boards. */
export async function openWorks(story: Story): Promise<void> {
  await story.act('petra', 'open-line', { code: LINE, name: 'Wave soldering line' })
  for (const [code, kind] of MACHINES) await story.act('petra', 'open-machine', { line: LINE, code, kind })
  for (const supplier of SUPPLIERS) await story.act('quill', 'add-supplier', { supplier })
}
