import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Actor } from '@/shared/actor'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { faceOf, type CommandName } from '@/shared/commands/all-faces'
import { WAYS_OUT, type BlockerKind } from '@/shared/commands/ways-out'
import { concededData } from '@/shared/gate/conceded-data'
import { GATE_SIGNATORIES, gateRefusal } from '@/shared/gate/gate'
import { gateFor, judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { OpenPoint } from '@/shared/gate/item-status'
import type { ActionEntry, ConcessionEntry, ProgrammeState } from '@/shared/gate/programme-state'
import type { Department } from '@/shared/plan/department'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { canBeConceded } from '@/shared/rules/finding'
import { anyProgramme } from './any-programme'
import { anyValue } from './any-value'
import { UNANSWERED } from '@/tests/rules/gate/unanswered'

/*
 * From any blocked state some sequence of permitted commands opens the gate. Each
 * step here is a command that the policy table lets somebody give, applied to the
 * facts as its work applies it; what is in the way is asked of the judgement anew.
 * The answer of record on what must be possible is this project's own.
 */

const AT = '2026-03-02T08:00:00.000Z'
const person = (personId: string, ...departments: Department[]): Actor => ({
  personId,
  name: personId,
  departments,
  leads: false,
  auditor: false,
  administrator: false,
})
const OF: Readonly<Record<Department, Actor>> = {
  design: person('dora', 'design'),
  production: person('pia', 'production'),
  quality: person('quentin', 'quality'),
}
/** Asks for concessions, so that no signatory of a gate has. */
const asker = person('ada', 'production')
const lead: Actor = { ...person('lea', 'design'), leads: true }
const by = ({ personId, name }: Actor) => ({ byId: personId, byName: name, at: AT, on: AT.slice(0, 10) })

/** A command may be given by this person; otherwise the law is broken here. */
const permitted = (refused: string | undefined): void => expect(refused).toBeUndefined()

interface Met {
  readonly state: ProgrammeState
  readonly judgement: Judgement
  readonly itemKey: string
  readonly target: string
}
type WayTaken = (met: Met) => ProgrammeState

const WAYS: Readonly<Record<Exclude<OpenPoint['kind'], 'approval'>, WayTaken>> = {
  value({ state, target }) {
    const parameter = findParameter(target)!
    permitted(refusal('revise-parameter', lead, parameter))
    const [value] = fc.sample(
      anyValue(parameter).filter((one) => one !== undefined),
      { numRuns: 1, seed: 11 },
    )
    return { ...state, facts: { ...state.facts, values: new Map(state.facts.values).set(target, value) } }
  },
  finding({ state, judgement, itemKey, target }) {
    const finding = judgement.findings.get(target)!
    expect(canBeConceded(finding), `${target} is ${finding.verdict} and cannot be conceded`).toBe(true)
    permitted(refusal('request-concession', asker))
    const asked: ConcessionEntry = {
      id: `${itemKey} ${target} ${state.concessions.length}`,
      number: 1000 + state.concessions.length,
      itemKey,
      rule: target,
      findingDigest: '',
      findingData: concededData(finding, state.facts),
      permit: null,
      why: 'Tolerable.',
      quantity: 10,
      untilOn: null,
      requestedById: asker.personId,
      requestedByName: asker.name,
      requestedAt: AT,
      design: null,
      quality: null,
      refused: null,
    }
    permitted(refusal('grant-concession', OF.design, { department: 'design', concession: asked }))
    const half = { ...asked, design: by(OF.design) }
    permitted(refusal('grant-concession', OF.quality, { department: 'quality', concession: half }))
    return { ...state, concessions: [...state.concessions, { ...half, quality: by(OF.quality) }] }
  },
  evidence({ state, itemKey, target }) {
    permitted(refusal('attach-evidence', OF.production))
    const attached = {
      id: `${itemKey} ${target}`,
      itemKey,
      kind: target,
      note: '',
      sha256: null,
      fileName: null,
      url: 'https://example.invalid/',
      addedById: 'p',
      addedByName: 'P',
      at: AT,
    }
    return { ...state, evidence: [...state.evidence, attached] }
  },
  action({ state, target }) {
    const actions = state.actions.map((action) => {
      if (String(action.number) !== target) return action
      permitted(refusal('withdraw-action', OF[action.from], action))
      return { ...action, outcome: 'withdrawn' as const }
    })
    return { ...state, actions }
  },
  concession({ state, target }) {
    permitted(refusal('refuse-concession', OF.quality))
    const concessions = state.concessions.map((entry) =>
      String(entry.number) === target ? { ...entry, refused: { ...by(OF.quality), why: 'No.' } } : entry,
    )
    return { ...state, concessions }
  },
  'not applicable'({ state, itemKey }) {
    const items = state.items.map((item) => {
      if (item.definition.key !== itemKey || !item.tailoredOut) return item
      permitted(refusal('decide-set-aside', OF.quality, item.tailoredOut))
      return { ...item, tailoredOut: { ...item.tailoredOut, agreed: by(OF.quality) } }
    })
    return { ...state, items }
  },
}

const wantsEvidence = ({ definition }: ProgrammeState['items'][number]): boolean =>
  definition.evidence.some(({ required }) => required)

/**
 * The same programme with a deviation permit asked for and not decided, and a question not answered, on an item that
 * concerns the board; and with the evidence that an item must have, not attached.
 */
function withPointsOpen(programme: ProgrammeState): ProgrammeState {
  const state = {
    ...programme,
    items: programme.items.map((item) => (wantsEvidence(item) ? { ...item, tailoredOut: null } : item)),
    evidence: programme.evidence.filter(
      ({ itemKey }) =>
        !programme.items.some((item) => item.definition.key === itemKey && wantsEvidence(item)),
    ),
  }
  const item = state.items.find(({ definition, tailoredOut }) => definition.rules.length > 0 && !tailoredOut)
  const rule = item?.definition.rules[0]
  if (!item || !rule) return state
  const asked: ConcessionEntry = {
    id: 'asked',
    number: 500,
    itemKey: item.definition.key,
    rule: rule.id,
    findingDigest: '',
    findingData: null,
    permit: { kind: 'parts', way: 'fails', parts: ['A'] },
    why: 'For a pilot run.',
    quantity: 5,
    untilOn: null,
    requestedById: asker.personId,
    requestedByName: asker.name,
    requestedAt: AT,
    design: null,
    quality: null,
    refused: null,
  }
  const question: ActionEntry = {
    id: 'question',
    number: 501,
    itemKey: item.definition.key,
    from: 'design',
    to: 'production',
    kind: 'information',
    question: 'Can it be soldered?',
    dueOn: '2026-12-31',
    askedById: asker.personId,
    askedByName: asker.name,
    askedAt: AT,
    ...UNANSWERED,
  }
  return {
    ...state,
    actions: [...state.actions, question],
    concessions: [...state.concessions, asked],
  }
}

/** What comes earlier may change the findings, which are conceded last. */
const ORDER = ['not applicable', 'value', 'evidence', 'action', 'concession', 'finding'] as const

const pointsOf = (judgement: Judgement, kind: OpenPoint['kind']) =>
  judgement.items.flatMap(({ item, openPoints }) =>
    openPoints
      .filter((point) => point.kind === kind)
      .map(({ target }) => ({ itemKey: item.definition.key, target })),
  )

/** Everything but signatures out of the way of every item. */
function cleared(start: ProgrammeState, met: Set<string>): ProgrammeState {
  let state = start
  for (const kind of ORDER) {
    const judgement = judgeProgramme(state)
    for (const point of pointsOf(judgement, kind)) {
      met.add(kind)
      state = WAYS[kind]({ state, judgement, ...point })
    }
    expect(pointsOf(judgeProgramme(state), kind), `${kind} is out of the way`).toEqual([])
  }
  return state
}

function approved(state: ProgrammeState, met: Set<string>): ProgrammeState {
  const judgement = judgeProgramme(state)
  let approving = state
  for (const item of judgement.items)
    for (const { department } of item.approvals.filter(({ holds }) => !holds)) {
      if (item.item.tailoredOut?.agreed) continue
      met.add('approval')
      permitted(refusal('approve-item', OF[department], { department, item, state }))
      const approval = {
        id: `${item.item.definition.key} ${department}`,
        itemKey: item.item.definition.key,
        department,
        personId: OF[department].personId,
        personName: department,
        digest: item.digest,
        signedContent: item.signedContent,
        found: null,
        at: AT,
      }
      approving = { ...approving, approvals: [...approving.approvals, approval] }
    }
  return approving
}

function signed(state: ProgrammeState, stage: Stage): ProgrammeState {
  return GATE_SIGNATORIES.reduce((before, department) => {
    const judgement = judgeProgramme(before)
    const gate = gateFor(judgement, stage)!
    if (gate.signatures.some((entry) => entry.department === department && entry.holds)) return before
    permitted(gateRefusal(gate, department))
    const subject = { department, gate, items: judgement.items, concessions: before.concessions }
    permitted(refusal('sign-gate', OF[department], subject))
    const signature = {
      id: `${stage} ${department}`,
      stage,
      department,
      personId: OF[department].personId,
      personName: department,
      digest: gate.digest,
      signedContent: gate.signedContent,
      merkleRoot: '',
      trailSeq: 1,
      headHash: '',
      at: AT,
    }
    return { ...before, gateSignatures: [...before.gateSignatures, signature] }
  }, state)
}

describe('from any blocked state', () => {
  test('permitted commands open every gate, one after the other', () => {
    const met = new Set<string>()
    fc.assert(
      fc.property(anyProgramme, (start) => {
        const ready = approved(cleared(withPointsOpen(start), met), met)
        const open = STAGES.reduce(signed, ready)
        expect(judgeProgramme(open).gates.map(({ status }) => status)).toEqual(STAGES.map(() => 'open'))
      }),
      { numRuns: Number(process.env['ANY_RUNS'] ?? 8) },
    )
    expect([...met].sort()).toEqual([...ORDER, 'approval'].sort())
  }, 300_000)

  test('there is a way out of every kind of blocker that a member may take', () => {
    const kinds: readonly BlockerKind[] = [...ORDER, 'approval', 'gate']
    expect(Object.keys(WAYS_OUT).sort()).toEqual([...kinds].sort())
    for (const way of Object.values(WAYS_OUT).flat())
      for (const command of way as readonly CommandName[])
        expect(faceOf(command).may.departments?.length, command).toBeGreaterThan(0)
  })
})
