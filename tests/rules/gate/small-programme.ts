import { foundText } from '@/shared/gate/found-then'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { ApprovalEntry, GateSignatureEntry, ProgrammeState } from '@/shared/gate/programme-state'
import { GATE_SIGNATORIES } from '@/shared/gate/gate'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { numberParameter } from '@/shared/plan/parameter'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { NO_RECORDS } from '@/shared/records/programme-records'
import { rule } from '@/shared/rules/rule'

const AT = '2026-02-01T08:00:00.000Z'

/** A coat thickness that every test turns, and a width beside it that nothing else reads. */
export const coat = numberParameter({
  key: 'test-coat',
  label: 'Coat',
  help: '',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 50,
})
export const width = numberParameter({
  key: 'test-width',
  label: 'Width',
  help: '',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 50,
})

const coatRule = rule({
  id: 'test-coat-least',
  title: 'Coat thick enough',
  why: 'A thin coat does not last.',
  formula: 'coat ≥ 5 µm',
  stage: 'specification',
  version: 1,
  reads: { coat },
  judge: ({ coat: found }) => ({
    verdict: found >= 5 ? 'meets' : 'fails',
    found: `The coat is ${found} µm.`,
    measured: { coat: { value: found, unit: 'µm' } },
    limit: 'at least 5 µm',
    working: [],
    sources: [],
    remedy: { message: 'Order 5 µm.', parameter: coat.key, value: 5 },
  }),
})
const storageRule = rule({
  id: 'test-storage',
  title: 'Storage',
  why: 'A coat is used up in store.',
  formula: '2 months a micrometre',
  stage: 'control',
  version: 1,
  reads: { coat },
  judge: ({ coat: found }) => ({
    verdict: 'meets',
    found: `It may lie ${found * 2} months.`,
    measured: { storage: { value: found * 2, unit: 'months' } },
    limit: 'at least 1 month',
    working: [],
    sources: [],
  }),
})

const item = (key: string, stage: Stage, over: Partial<ItemDefinition>): ItemDefinition => ({
  key,
  stage,
  title: key,
  asks: '?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'quality'],
  parameters: [],
  limits: [],
  rules: [],
  evidence: [],
  cautions: [],
  ...over,
})

/** Coat and width are specified apart; an item of the control stage reads the coat, one of the evaluation reads neither. */
const PLAN = [
  item('finish', 'specification', { parameters: [coat], rules: [coatRule] }),
  item('conductors', 'specification', { parameters: [width] }),
  item('coupons', 'evaluation', {}),
  item('store', 'control', { rules: [storageRule] }),
  item('closing', 'assessment', {}),
]

const bare: ProgrammeState = {
  programme: { id: 'p', code: 'P-1', title: 'A board', leadId: 'l' },
  members: [],
  items: PLAN.map((definition) => ({ definition, added: false, tailoredOut: null, lesson: null })),
  revisions: new Map(),
  facts: {
    values: new Map<string, unknown>([
      [coat.key, 8],
      [width.key, 1],
    ]),
    requirements: [],
    records: NO_RECORDS,
    today: '2026-03-01',
  },
  evidence: [],
  actions: [],
  approvals: [],
  concessions: [],
  gateSignatures: [],
}

/** Everything approved, and the gates up to this stage signed by all three; a coat of 8 µm. */
export function signedUpTo(last: Stage): ProgrammeState {
  const judged = judgeProgramme(bare)
  const approvals = judged.items.flatMap(({ item, item: { definition }, signedContent, digest }) =>
    definition.approvers.map((department): ApprovalEntry => ({
      id: `${definition.key} ${department}`,
      itemKey: definition.key,
      department,
      personId: department,
      personName: `Somebody of ${department}`,
      digest,
      signedContent,
      found: foundText(item, judged.findings),
      at: AT,
    })),
  )
  return STAGES.slice(0, STAGES.indexOf(last) + 1).reduce(withGateSigned, { ...bare, approvals })
}

function withGateSigned(state: ProgrammeState, stage: Stage): ProgrammeState {
  const gate = judgeProgramme(state).gates.find((entry) => entry.stage === stage)
  if (!gate) throw new Error(`There is no gate of ${stage}.`)
  const signatures = GATE_SIGNATORIES.map((department): GateSignatureEntry => ({
    id: `${stage} ${department}`,
    stage,
    department,
    personId: department,
    personName: `Somebody of ${department}`,
    digest: gate.digest,
    signedContent: gate.signedContent,
    merkleRoot: '',
    trailSeq: 1,
    headHash: '',
    at: AT,
  }))
  return { ...state, gateSignatures: [...state.gateSignatures, ...signatures] }
}
