import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { boardJoints } from '@/shared/plan/board-joints'
import { handJointsMax } from '@/shared/plan/limits/soldering-process'
import { handJointsGuard } from '@/shared/plan/limits/specification-guards'
import type { ValueOf } from '@/shared/plan/parameter'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { copperLayers, solderExposures } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'

type Process = ValueOf<typeof solderingProcess>

const PROCESS_WORD: Record<Process, string> = {
  hand: 'hand soldering',
  dip: 'dip soldering',
  wave: 'wave soldering',
  selective: 'selective soldering',
  reflow: 'reflow with paste in the holes',
}

export const processSuitsJoints = rule({
  id: 'process-suits-joints',
  title: 'Process for these joints',
  why: 'A process chosen for another board shows only in production: too many joints for the iron, too much heat for the parts, or joints that no solder reaches.',
  formula:
    'process and hole table agree; joints by hand · boards per year ≤ most; its heat is among the exposures',
  stage: 'specification',
  version: 2,
  reads: {
    process: solderingProcess,
    holes: leadHoles,
    surfaceMount: optional(surfaceMountJoints),
    layers: copperLayers,
    exposures: solderExposures,
    volume: annualVolume,
    handMax: handJointsMax,
    handGuard: handJointsGuard,
  },
  judge({ process, holes, surfaceMount, layers, exposures, volume, handMax, handGuard }) {
    const joints = boardJoints(holes, surfaceMount)
    // Left open, there may be some: silence takes away no warning.
    const mayHaveSurfaceMount = surfaceMount === undefined || surfaceMount > 0
    const unplated = holes.some((row) => !row.plated && row.soldered === 'machine')
    const parts: Part[] = [
      agreement(process, joints.machine),
      handWork(joints.hand * volume, handMax.value, handGuard.value / 100),
      ...(process === 'reflow' && unplated
        ? [
            {
              subject: 'Unplated holes',
              about: { matter: 'unplated holes' },
              verdict: 'fails' as const,
              found: 'paste does not fill unplated holes',
              remedy: { message: 'Plate the holes, or wave-solder them.' },
            },
          ]
        : []),
      ...(process === 'dip' && (layers > 2 || mayHaveSurfaceMount)
        ? [
            {
              subject: 'Dip soldering',
              about: { matter: 'dip soldering' },
              verdict: 'marginal' as const,
              found:
                'suits single- and double-sided boards of through-hole parts; gas stays trapped under a flat dip',
              remedy: { message: 'Prefer the wave for this board.' },
            },
          ]
        : []),
      ...(process === 'wave' && mayHaveSurfaceMount
        ? [
            {
              subject: 'Surface-mount parts on the wave',
              about: { matter: 'surface mount on the wave' },
              verdict: 'marginal' as const,
              measured: { surfaceMount: surfaceMount === undefined ? 'not specified' : true },
              found: `${surfaceMount === undefined ? 'it is not specified whether there are any; ' : ''}parts on the solder side pass through the wave: they need glue, wider pads and at most 260 °C for 10 s`,
              remedy: {
                message:
                  surfaceMount === undefined
                    ? 'State how many surface-mount joints there are; none is 0.'
                    : 'Keep them on the other side, or solder selectively.',
              },
            },
          ]
        : []),
      exposureListed(process, exposures),
    ]
    return judgedByParts({
      parts,
      noun: 'points',
      limit: `${PROCESS_WORD[process]} for ${joints.machine} joints by machine, ${joints.hand} by hand; at most ${formatQuantity(handMax.value, 'joints')} a year by hand (${handMax.document})`,
      working: [
        {
          label: 'Joints by hand in a year',
          formula: 'joints by hand · boards per year',
          numbers: `${joints.hand} · ${formatQuantity(volume, 'boards')}`,
          result: formatQuantity(joints.hand * volume, 'joints', 6),
        },
      ],
      sources: [
        handMax.limit.byDefault.from,
        fromMemory(
          'Components: at most 260 °C for 5 to 10 s in all waves together, as their data sheets say',
        ),
        commonPractice('What each process suits'),
      ],
    })
  },
})

/** The process and the hole table must speak of the same joints. */
function agreement(process: Process, byMachine: number): Part {
  const common = {
    subject: 'Hole table',
    about: { matter: 'hole table' },
    measured: { process, byMachine: count(byMachine, 'joints') },
  }
  if (process === 'hand' && byMachine > 0) {
    return {
      ...common,
      verdict: 'fails',
      found: `${byMachine} joints are said to be soldered by machine, and the process is by hand`,
      remedy: { message: 'Choose a machine process, or mark the joints as soldered by hand.' },
    }
  }
  if (process !== 'hand' && byMachine === 0) {
    return {
      ...common,
      verdict: 'fails',
      found: `no joint is soldered by machine, and the process is ${PROCESS_WORD[process]}`,
      remedy: { message: 'Mark the joints of the machine in the hole table, or choose hand soldering.' },
    }
  }
  return { ...common, verdict: 'meets', found: 'agrees with the process' }
}

const handWork = (found: number, max: number, share: number): Part => {
  const part = partOn({
    subject: 'Hand work',
    about: { matter: 'hand work' },
    found: `${formatQuantity(found, 'joints', 6)} a year`,
    margin: { found, limit: max, unit: 'joints', direction: 'at most', guardBand: share * max },
  })
  return part.verdict === 'meets' ? part : { ...part, remedy: { message: 'Move joints to a machine.' } }
}

/** The heat of the process must be among the exposures that the laminate is judged by. */
function exposureListed(process: Process, exposures: ValueOf<typeof solderExposures>): Part {
  const common = {
    subject: 'Solder exposures',
    about: { matter: 'solder exposures' },
    measured: { process },
  }
  if (exposures.some((row) => row.kind === process)) {
    return { ...common, verdict: 'meets', found: `list ${PROCESS_WORD[process]}` }
  }
  return {
    ...common,
    verdict: 'fails',
    found: `do not list ${PROCESS_WORD[process]}, so the laminate is judged without it`,
    remedy: { message: `Add ${PROCESS_WORD[process]} to the solder exposures.` },
  }
}
