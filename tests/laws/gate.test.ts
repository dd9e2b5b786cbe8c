import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gateRefusal } from '@/shared/gate/gate'
import { gateFor, itemStateFor, judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { flagParameter, numberParameter } from '@/shared/plan/parameter'
import { STAGES, stageBefore, type Stage } from '@/shared/plan/stage'
import { rule } from '@/shared/rules/rule'
import { NO_RECORDS } from '@/shared/records/programme-records'
import { UNANSWERED } from '@/tests/rules/gate/unanswered'

/*
 * A plan of one item a stage, small enough to reason about: a number that a
 * rule wants at most 10, wanted evidence, and three approvals.
 */
const amount = (stage: Stage) =>
  numberParameter({
    key: `${stage}-amount`,
    label: 'Amount',
    help: '',
    owner: 'design',
    unit: '1',
    min: 0,
    max: 100,
  })
const extra = flagParameter({ key: 'extra', label: 'Extra', help: '', owner: 'design' })

const PLAN: readonly ItemDefinition[] = STAGES.map((stage) => {
  const parameter = amount(stage)
  return {
    key: `${stage}-item`,
    stage,
    title: `Item of ${stage}`,
    version: 1,
    asks: 'Is the amount small?',
    owner: 'design',
    approvers: DEPARTMENTS,
    parameters: [parameter, extra],
    limits: [],
    rules: [
      rule({
        id: `${stage}-small`,
        title: 'Small',
        why: 'Large amounts hurt.',
        formula: 'amount ≤ 10',
        stage,
        version: 1,
        reads: { amount: parameter },
        judge: ({ amount: found }) => ({
          verdict: found <= 10 ? 'meets' : 'fails',
          found: `It is ${found}.`,
          limit: 'at most 10',
          working: [],
          sources: [],
        }),
      }),
    ],
    evidence: [{ kind: 'photograph', label: 'a photograph', required: true }],
    cautions: [],
  }
})

interface Facts {
  readonly amount: number | null
  readonly photographed: boolean
  readonly asked: boolean
  readonly tailoredOut: boolean
  readonly approvedBy: readonly Department[]
  /** An approval given for another state of the item. */
  readonly stale: boolean
  readonly signedBy: readonly Department[]
}
type World = Readonly<Record<Stage, Facts>>

const factsArb = fc.record<Facts>({
  amount: fc.option(fc.integer({ min: 0, max: 14 }), { nil: null }),
  photographed: fc.boolean(),
  asked: fc.boolean(),
  tailoredOut: fc.boolean(),
  approvedBy: fc.subarray([...DEPARTMENTS]),
  stale: fc.boolean(),
  signedBy: fc.subarray([...DEPARTMENTS]),
})
/** Most random worlds are blocked; every second one is nearly in order, so that open gates are met too. */
const inOrder: Facts = {
  amount: 5,
  photographed: true,
  asked: false,
  tailoredOut: false,
  approvedBy: DEPARTMENTS,
  stale: false,
  signedBy: DEPARTMENTS,
}
const nearlyArb = fc.oneof({ weight: 5, arbitrary: fc.constant(inOrder) }, { weight: 1, arbitrary: factsArb })
const worldArb: fc.Arbitrary<World> = fc.oneof(
  fc.record({ specification: factsArb, evaluation: factsArb, control: factsArb, assessment: factsArb }),
  fc.record({ specification: nearlyArb, evaluation: nearlyArb, control: nearlyArb, assessment: nearlyArb }),
)

const AT = '2026-01-01T00:00:00.000Z'
const BY = { byId: 'q', byName: 'Q', at: AT }

/** Builds the state in three passes, since approvals and signatures quote digests of what was before them. */
function stateOf(world: World): ProgrammeState {
  const bare = bareState(world)
  const approved = {
    ...bare,
    approvals: STAGES.flatMap((stage) => approvalsOf(stage, world[stage], judgeProgramme(bare))),
  }
  return STAGES.reduce<ProgrammeState>((state, stage) => {
    const digest = gateFor(judgeProgramme(state), stage)?.digest ?? ''
    const signatures = world[stage].signedBy.map((department) => ({
      id: `${stage} ${department}`,
      stage,
      department,
      personId: department,
      personName: department,
      digest,
      signedContent: '',
      found: null,
      merkleRoot: '',
      trailSeq: 1,
      headHash: '',
      at: AT,
    }))
    return { ...state, gateSignatures: [...state.gateSignatures, ...signatures] }
  }, approved)
}

function approvalsOf(stage: Stage, { approvedBy, stale }: Facts, judgement: Judgement) {
  const item = itemStateFor(judgement, `${stage}-item`)
  return approvedBy.map((department) => ({
    id: `${stage} ${department}`,
    itemKey: `${stage}-item`,
    department,
    personId: department,
    personName: department,
    digest: stale ? '0'.repeat(64) : (item?.digest ?? ''),
    signedContent: item?.signedContent ?? '',
    found: null,
    at: AT,
  }))
}

const bareState = (world: World): ProgrammeState => ({
  programme: { id: 'p', code: 'P-1', title: 'Per board', leadId: 'l' },
  members: [],
  items: PLAN.map((definition) => ({
    definition,
    added: false,
    tailoredOut: world[definition.stage].tailoredOut
      ? { reason: 'Not here.', proposedById: 'd', proposedByName: 'D', proposedAt: AT, agreed: BY }
      : null,
    lesson: null,
  })),
  revisions: new Map(),
  facts: {
    values: new Map<string, unknown>([
      ['extra', true],
      ...STAGES.filter((stage) => world[stage].amount !== null).map(
        (stage) => [`${stage}-amount`, world[stage].amount] as const,
      ),
    ]),
    requirements: [],
    records: NO_RECORDS,
    today: '2026-01-01',
  },
  evidence: STAGES.filter((stage) => world[stage].photographed).map((stage) => ({
    id: stage,
    itemKey: `${stage}-item`,
    kind: 'photograph',
    note: '',
    sha256: '1'.repeat(64),
    fileName: 'a.png',
    url: null,
    addedById: 'd',
    addedByName: 'D',
    at: AT,
  })),
  actions: STAGES.filter((stage) => world[stage].asked).map((stage, index) => ({
    id: stage,
    number: index + 1,
    itemKey: `${stage}-item`,
    from: 'design',
    to: 'production',
    kind: 'cost',
    question: '?',
    dueOn: '2026-02-01',
    askedById: 'd',
    askedByName: 'D',
    askedAt: AT,
    ...UNANSWERED,
  })),
  approvals: [],
  concessions: [],
  gateSignatures: [],
})

/** Said again from the facts, apart from the code under test: is nothing at all in this stage's way? */
const isClear = ({ amount: value, photographed, asked, tailoredOut, approvedBy, stale }: Facts): boolean =>
  tailoredOut ||
  (value !== null && value <= 10 && photographed && !asked && approvedBy.length === 3 && !stale)

const RUNS = { numRuns: 400 }

describe('a gate', () => {
  test('opens exactly when its stage is clear, all three signed, and the gates before are open', () => {
    let opened = 0
    fc.assert(
      fc.property(worldArb, (world) => {
        const judgement = judgeProgramme(stateOf(world))
        let before = true
        for (const stage of STAGES) {
          const gate = gateFor(judgement, stage)
          const open: boolean = before && isClear(world[stage]) && world[stage].signedBy.length === 3
          expect(gate?.status === 'open').toBe(open)
          if (open) opened++
          before = open
        }
      }),
      RUNS,
    )
    expect(opened).toBeGreaterThan(50)
  })

  test('never opens, and can never be signed, with a blocker', () => {
    fc.assert(
      fc.property(worldArb, (world) => {
        for (const gate of judgeProgramme(stateOf(world)).gates) {
          if (gate.blockers.length === 0) continue
          expect(gate.status).not.toBe('open')
          for (const department of DEPARTMENTS)
            expect(gateRefusal(gate, department)).toMatch(/^The gate is blocked\./)
        }
      }),
      RUNS,
    )
  })

  test('stands no longer once anything its stage, or a stage before, rests on has changed', () => {
    const whole: World = {
      specification: inOrder,
      evaluation: inOrder,
      control: inOrder,
      assessment: inOrder,
    }
    const signed = stateOf(whole)
    expect(judgeProgramme(signed).gates.map(({ status }) => status)).toEqual(['open', 'open', 'open', 'open'])
    fc.assert(
      fc.property(fc.constantFrom(...STAGES), fc.integer({ min: 0, max: 4 }), (stage, value) => {
        const values = new Map(signed.facts.values).set(`${stage}-amount`, value)
        const changed = judgeProgramme({ ...signed, facts: { ...signed.facts, values } })
        for (const gate of changed.gates) {
          const reached = STAGES.indexOf(gate.stage) >= STAGES.indexOf(stage)
          expect(gate.status).toBe(reached ? 'lapsed' : 'open')
        }
      }),
    )
    expect(stageBefore('specification')).toBeUndefined()
  })
})

describe('an approval', () => {
  test('holds exactly while its digest does: a change lapses it, the change undone restores it', () => {
    const state = stateOf({
      specification: inOrder,
      evaluation: inOrder,
      control: inOrder,
      assessment: inOrder,
    })
    const withAmount = (value: number): ProgrammeState => ({
      ...state,
      facts: { ...state.facts, values: new Map(state.facts.values).set('control-amount', value) },
    })
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 }), (value) => {
        const item = itemStateFor(judgeProgramme(withAmount(value)), 'control-item')
        expect(item?.status).toBe(value === 5 ? 'approved' : 'lapsed')
        for (const { approval, holds } of item?.approvals ?? [])
          expect(holds).toBe(approval?.digest === item?.digest)
      }),
    )
  })

  test('judging anew from an earlier judgement gives what judging afresh gives', () => {
    fc.assert(
      fc.property(worldArb, worldArb, (one, other) => {
        const [before, after] = [stateOf(one), stateOf(other)]
        const incremental = judgeProgramme(after, judgeProgramme(before))
        const afresh = judgeProgramme(after)
        expect(incremental.gates).toEqual(afresh.gates)
        expect([...incremental.findings]).toEqual([...afresh.findings])
      }),
      { numRuns: 100 },
    )
  })
})
