import { groupedBy } from '@/shared/grouped-by'
import { reliefCopperMax, reliefShareMax } from '@/shared/plan/limits/board-files'
import { reliefGuard } from '@/shared/plan/limits/specification-guards'
import { copperFoil } from '@/shared/plan/parameters/laminate'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { PlaneJoint } from '../plane-joints'
import { holeName } from './hole-name'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'

/** The foil that the summed width of webs is told for, µm: that of 1 oz of copper on a square foot. */
const FOIL_UM = 35
/** A web narrower than this no board maker draws, mm: common practice, no published source. */
const WEB_MIN_MM = 0.15

/** Every joint whose land stands in large copper: how much of that copper draws its heat off. */
export const reliefOnBoard = ({ planeJoints, holes }: Board) =>
  rule({
    id: 'relief-on-board',
    title: 'Heat drawn off into planes',
    why: 'A land that a plane surrounds stays cold: the solder freezes before it has filled the hole, and whoever mends it overheats the board.',
    formula: 'webs of a layer together/land ≤ share; webs of all layers together · foil/35 µm ≤ most',
    stage: 'specification',
    version: 1,
    reads: { share: reliefShareMax, copper: reliefCopperMax, guard: reliefGuard, foil: optional(copperFoil) },
    judge({ share, copper, guard, foil }) {
      if (planeJoints.length === 0)
        return notApplicable('The files have no plated hole for a lead in large copper.')
      const named = (joint: PlaneJoint): string => holeName(holes[joint.hole]!)
      const part = guard.value / 100
      const onLayers = planeJoints.map((joint) => judgeLayer(joint, named(joint), { share, part }))
      const inAll = [...groupedBy(planeJoints, ({ hole }) => hole).values()].map((joints) =>
        judgeHole(joints, named(joints[0]!), {
          copper,
          part,
          foilUm: foil === undefined ? undefined : Number(foil),
        }),
      )
      return judgedByParts({
        parts: [...onLayers, ...inAll],
        noun: 'joints by layer and in all',
        limit: `Webs together at most ${formatQuantity(share.value, '%')} of the land (${share.document}); on all layers at most ${inMm(copper.value)} of ${FOIL_UM} µm copper (${copper.document})`,
        working: [],
        sources: [share.limit.byDefault.from],
        notes: [
          'Large is copper of one piece and layer of 507 mm² at least, a disc of an inch across; a conductor that leads there from a land counts as a web.',
          'The land is the one drawn: where a smaller one would do, the share is of that smaller one.',
        ],
      })
    },
  })

function judgeLayer(
  joint: PlaneJoint,
  name: string,
  { share, part }: { share: GoverningRequirement; part: number },
): PlacedPart {
  const { landMm, websMm, joinedMm, share: round, layer, at } = joint
  const found = (100 * joinedMm) / landMm
  const inShare = formatQuantity(100 * round, '%', 3)
  const judged = partOn({
    subject: `${name}, ${layer}`,
    about: { joint: name, layer },
    found:
      websMm.length === 0
        ? `the plane joins all of the way round its land of ${inMm(landMm)}`
        : `${websMm.length} webs of ${inMm(joinedMm)} together join ${inShare} of the way round its land of ${inMm(landMm)}`,
    measured: {
      webs: count(websMm.length),
      joined: measure(toMicrometre(joinedMm), 'mm'),
      land: measure(toMicrometre(landMm), 'mm'),
    },
    margin: { found, limit: share.value, unit: '%', direction: 'at most', guardBand: part * share.value },
  })
  const placed = { at, layer, rank: -found }
  if (judged.verdict === 'meets') return { ...judged, ...placed }
  return { ...judged, ...placed, remedy: { message: remedyFor(joint, share.value * (1 - part)) } }
}

/** Webs that keep within a share of the land, in whole tens of micrometres. */
function remedyFor({ landMm, websMm }: PlaneJoint, sharePct: number): string {
  const together = (sharePct / 100) * landMm
  const most = Math.max(1, Math.floor(together / WEB_MIN_MM))
  const webs = Math.min(most, websMm.length > 0 ? websMm.length : 4)
  const each = Math.floor((100 * together) / webs + 1e-6) / 100
  return `Join it by ${webs} ${webs === 1 ? 'web' : 'webs'} of at most ${inMm(each)}.`
}

function judgeHole(
  joints: readonly PlaneJoint[],
  name: string,
  { copper, part, foilUm }: { copper: GoverningRequirement; part: number; foilUm: number | undefined },
): Part | PlacedPart {
  const { at } = joints[0]!
  const width = joints.reduce((sum, { joinedMm }) => sum + joinedMm, 0)
  const subject = `${name}, on ${joints.length === 1 ? 'its layer' : `${joints.length} layers`}`
  const placed = { at, layer: joints[0]!.layer, rank: -width }
  const about = { joint: name }
  const drawn = `webs of ${inMm(width)} together`
  if (foilUm === undefined)
    return {
      subject,
      about,
      verdict: 'undetermined',
      found: `${drawn}; how thick the copper is, is not specified`,
      ...placed,
    }
  const found = toMicrometre((width * foilUm) / FOIL_UM)
  return {
    ...partOn({
      subject,
      about,
      found:
        foilUm === FOIL_UM ? drawn : `${drawn} of ${foilUm} µm copper, as ${inMm(found)} of ${FOIL_UM} µm`,
      margin: {
        found,
        limit: copper.value,
        unit: 'mm',
        direction: 'at most',
        guardBand: part * copper.value,
      },
    }),
    ...placed,
  }
}
