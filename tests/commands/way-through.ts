import fc from 'fast-check'
import { judgedProgramme, type JudgedProgramme } from '@/lib/programme/judged'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { isPermit } from '@/shared/gate/concession'
import { gateFor, itemStateFor } from '@/shared/gate/judgement'
import type { OpenPoint } from '@/shared/gate/item-status'
import type { Blocker } from '@/shared/gate/gate'
import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import type { Stage } from '@/shared/plan/stage'
import { stageDigest, type World } from '@/tests/commands/world'
import { anyValue } from '@/tests/laws/any-value'

/*
 * Takes a programme through a gate by nothing but commands, whoever may give
 * them, one blocker after the other: what stands in the way first, signatures last.
 */

/** Concessions and signatures rest on what is done before them, so that they come after it. */
const ORDER: readonly OpenPoint['kind'][] = [
  'not applicable',
  'value',
  'evidence',
  'action',
  'concession',
  'finding',
  'approval',
]

const SIGNATORY = { design: 'design', production: 'production', quality: 'quality' } as const
const reason = 'So that the board can go on.'

/** Which kinds of blockers were met on the way, and by which commands they went. */
export type WayTaken = Map<OpenPoint['kind'], Set<string>>

/** Opens the gate of a stage. Throws where a blocker is met that no command removes. */
export async function wayThrough(world: World, stage: Stage): Promise<WayTaken> {
  const taken: WayTaken = new Map()
  // Each round is rid of all blockers of one kind; a round may bring some of a later kind, never of an earlier one.
  for (let round = 0; round <= ORDER.length; round++) {
    const judged = await judgedNow(world)
    const blockers = gateFor(judged.judgement, stage)?.blockers ?? []
    const kind = ORDER.find((one) => blockers.some(({ openPoint }) => openPoint?.kind === one))
    if (!kind) {
      await signAll(world, stage)
      return taken
    }
    const commands = new Set<string>()
    for (const { itemKey, openPoint } of blockersOf(kind, blockers))
      commands.add(await WAYS[kind]({ world, judged, itemKey, openPoint }))
    taken.set(kind, commands)
  }
  throw new Error(`The ${stage} gate is not open after all that was in its way was done away with.`)
}

/** The blockers of a kind; a value that two items ask for is given once. */
const blockersOf = (kind: OpenPoint['kind'], blockers: readonly Blocker[]) => [
  ...new Map(
    blockers.flatMap(({ itemKey, openPoint }) =>
      itemKey && openPoint?.kind === kind
        ? [[kind === 'value' ? openPoint.target : `${itemKey} ${openPoint.target}`, { itemKey, openPoint }]]
        : [],
    ),
  ).values(),
]

export async function judgedNow({ code }: World): Promise<JudgedProgramme> {
  const judged = await judgedProgramme(code)
  if (!judged) throw new Error(`There is no programme ${code}.`)
  return judged
}

interface Met {
  readonly world: World
  readonly judged: JudgedProgramme
  readonly itemKey: string
  readonly openPoint: { readonly kind: string; readonly target: string }
}

/** A way out of every kind of open point; the compiler asks for each. */
const WAYS: Readonly<Record<OpenPoint['kind'], (met: Met) => Promise<string>>> = {
  async value({ world, openPoint: { target } }) {
    const parameter = findParameter(target)
    if (!parameter) throw new Error(`There is no parameter ${target}.`)
    const [value] = fc.sample(
      anyValue(parameter).filter((one) => one !== undefined),
      { numRuns: 1, seed: 7 },
    )
    await world.must('lead', 'revise-parameter', {
      programme: world.code,
      parameter: target,
      value: JSON.parse(JSON.stringify(value)),
      seen: 0,
      reason,
    })
    return 'revise-parameter'
  },
  async finding({ world, itemKey, openPoint: { target } }) {
    const asked = await world.must('secondProduction', 'request-concession', {
      programme: world.code,
      item: itemKey,
      rule: target,
      why: 'It is tolerable for the first boards.',
      quantity: 20,
      untilOn: null,
    })
    await grant(world, asked.result.concession)
    return 'request-concession'
  },
  async evidence({ world, itemKey, openPoint: { target } }) {
    await world.must('production', 'attach-evidence', {
      programme: world.code,
      item: itemKey,
      kind: target,
      note: '',
      what: { url: 'https://example.invalid/evidence' },
    })
    return 'attach-evidence'
  },
  async action({ world, judged, openPoint: { target } }) {
    const action = judged.state.actions.find(({ number }) => String(number) === target)
    if (!action) throw new Error(`There is no action ${target}.`)
    await world.must(SIGNATORY[action.from], 'withdraw-action', {
      programme: world.code,
      action: action.number,
      reason,
    })
    return 'withdraw-action'
  },
  async concession({ world, judged, openPoint: { target } }) {
    const entry = judged.state.concessions.find(({ number }) => String(number) === target)
    if (entry && isPermit(entry)) {
      await world.must('quality', 'refuse-concession', {
        programme: world.code,
        concession: entry.number,
        reason,
      })
      return 'refuse-concession'
    }
    await grant(world, Number(target))
    return 'grant-concession'
  },
  async 'not applicable'({ world, itemKey }) {
    await world.must('secondQuality', 'decide-set-aside', {
      programme: world.code,
      item: itemKey,
      agree: true,
      comment: '',
    })
    return 'decide-set-aside'
  },
  async approval({ world, judged, itemKey, openPoint: { target } }) {
    const department = target as Department
    await world.must(SIGNATORY[department], 'approve-item', {
      programme: world.code,
      item: itemKey,
      department,
      digest: itemStateFor(judged.judgement, itemKey)?.digest ?? '',
      comment: '',
    })
    return 'approve-item'
  },
}

/** Both signatures, of whichever have not been given. */
export async function grant(world: World, concession: number): Promise<void> {
  for (const department of ['design', 'quality'] as const)
    await world.must(department, 'grant-concession', { programme: world.code, concession, department })
}

async function signAll(world: World, stage: Stage): Promise<void> {
  for (const department of DEPARTMENTS)
    await world.must(SIGNATORY[department], 'sign-gate', {
      programme: world.code,
      stage,
      department,
      digest: await stageDigest(world.code, stage),
    })
}
