import { limit, type Limit } from '@/shared/plan/requirement'
import type { Unit } from '@/shared/quantity/unit'
import { commonPractice } from '@/shared/sources/provenance'

/**
 * How near to its limit a specified value counts as only just good, where not
 * a document but practice says so. Wider is stricter; a share is one of the limit.
 */
const guard = (key: string, label: string, [value, unit]: readonly [number, Unit], practice: string): Limit =>
  limit({
    key: `${key}-guard`,
    label: `Only just good: ${label}`,
    unit,
    direction: 'at least',
    byDefault: { value, authority: 'common practice', from: commonPractice(practice) },
  })

export const ringGuard = guard(
  'annular-ring',
  'annular ring',
  [0.02, 'mm'],
  'A drill wanders by about 0.02 mm more on a bad day than its allowance takes in',
)
export const aspectRatioGuard = guard(
  'aspect-ratio',
  'board thickness over drilled hole, share of the limit',
  [10, '%'],
  'From a tenth below its limit a barrel is thin in its middle already',
)
export const conductorCopperGuard = guard(
  'conductor-copper',
  'copper counted on, share of what is there at least',
  [5, '%'],
  'A twentieth of the copper is kept free for cleaning that is done once more',
)
export const conductorRiseGuard = guard(
  'conductor-rise',
  'rise of a conductor, share of the limit',
  [10, '%'],
  'The fits to measured rises are no better than a tenth',
)
export const conductorDropGuard = guard(
  'conductor-drop',
  'voltage drop, share of what is allowed',
  [20, '%'],
  'Etching leaves conductors narrower than drawn: a fifth of the drop is kept free',
)
export const voltageSpacingGuard = guard(
  'voltage-spacing',
  'spacing for voltage, share of the least',
  [10, '%'],
  'Etching and registration move an edge: a tenth of the spacing is kept free',
)
export const bridgingGuard = guard(
  'bridging',
  'bare gap or run, share of the limit',
  [10, '%'],
  'Registration of mask and copper moves an edge: a tenth of the gap is kept free',
)
export const maskWebGuard = guard(
  'mask-web',
  'web of solder mask, share of the least',
  [10, '%'],
  'Exposure and washing take from a web on both sides: a tenth of it is kept free',
)
export const reliefGuard = guard(
  'relief',
  'webs from a land to a plane, share of the limit',
  [10, '%'],
  'Etching leaves webs a little narrower than drawn, plating a little thicker: a tenth is kept free',
)
export const edgeClearanceGuard = guard(
  'edge-clearance',
  'distance from the edge, share of the least',
  [10, '%'],
  'Routing and scoring move an edge: a tenth of the distance is kept free',
)
export const solidusGuard = guard(
  'solidus',
  'solidus over the service temperature',
  [10, 'K'],
  'The warmest place of a board is known to about 10 K before it is measured',
)
export const glassTransitionGuard = guard(
  'glass-transition',
  'glass transition over the service temperature',
  [5, 'K'],
  'A glass transition is measured to about 5 K, and methods differ by more',
)
export const floatUsedGuard = guard(
  'float-used',
  'solder float used up, share of the limit',
  [20, '%'],
  'Floats are tried on clean, dry laminate: a fifth of the capability is kept free',
)
export const lacquerStorageGuard = guard(
  'lacquer-storage',
  'storage under lacquer, share of the limit',
  [25, '%'],
  'In the last quarter of its time lacquered copper is soldered first',
)
export const freeTinGuard = guard(
  'free-tin',
  'coating left at soldering',
  [0.25, 'µm'],
  'X-ray fluorescence reads a coating of tin to about 0.25 µm',
)
export const goldFractionGuard = guard(
  'gold-fraction',
  'gold in a joint, share of the limit',
  [10, '%'],
  'Solder in a joint varies by more than a tenth from one to the next',
)
export const insulationWithResidueGuard = guard(
  'insulation-with-residue',
  'insulation needed with residue left, share of the limit',
  [50, '%'],
  'Insulation readings of one lot differ by two to one',
)
export const gridShareGuard = guard(
  'grid-share',
  'joints on the grid',
  [5, '%'],
  'A change of one connector moves a twentieth of the joints of a board',
)
export const holeWindowGuard = guard(
  'hole-window',
  'hole inside its producibility window, diameter',
  [0.02, 'mm'],
  'Pin gauges and plating leave about 0.02 mm of doubt in a finished hole',
)
export const clearanceWindowGuard = guard(
  'clearance-window',
  'radial clearance, share of the width of its window',
  [10, '%'],
  'Within a tenth of the window’s width a clearance is only just good',
)
export const clearanceShareGuard = guard(
  'clearance-share',
  'joints outside the clearance window, share of what is allowed',
  [25, '%'],
  'A share so small moves by a quarter with the spread that is assumed',
)
export const leadEntryGuard = guard(
  'lead-entry',
  'room of a lead that stands off its place',
  [0.02, 'mm'],
  'Below about 0.02 mm of room a lead is pushed in by force',
)
export const flatLeadGuard = guard(
  'flat-lead',
  'hole over the thickness of a flat lead, share of the limit',
  [5, '%'],
  'Within a twentieth of the limit the gap of a flat lead is only just good',
)
export const filletAngleGuard = guard(
  'fillet-angle',
  'contact angles of lead and land together',
  [20, '°'],
  'Contact angles of one lot scatter by about 10° each',
)
export const leadStatusGuard = guard(
  'lead-standing',
  'lead standing out of its fillet',
  [0.1, 'mm'],
  'A lead’s end is seen from about 0.1 mm of it on',
)
export const capillaryRiseGuard = guard(
  'capillary-rise',
  'rise of solder at rest over board thickness',
  [1, '×'],
  'One board’s thickness more than is asked is kept free for cold copper',
)
export const jointBudgetGuard = guard(
  'joint-budget',
  'predicted failure rate, share of the allowed one',
  [20, '%'],
  'The model is far coarser than a fifth: so near it says nothing for the design',
)
export const testCyclesGuard = guard(
  'test-cycles',
  'cycles of the test, share of those needed',
  [20, '%'],
  'The constants of the acceleration are no better known than a fifth',
)
export const leadlessFatigueGuard = guard(
  'leadless-fatigue',
  'fatigue life used up, share of all',
  [50, '%'],
  'The strain model is good to about a factor of two in cycles',
)
export const processExcessGuard = guard(
  'process-excess',
  'cost over the cheapest process, share of the limit',
  [50, '%'],
  'Whoever chooses the dearer process within the limit still sees it',
)
export const handJointsGuard = guard(
  'hand-joints',
  'joints by hand, share of the limit',
  [10, '%'],
  'From a tenth below the limit a bench has no room for rework',
)
