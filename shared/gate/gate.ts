import { groupedBy } from '@/shared/grouped-by'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES, STAGES, stageBefore, type Stage } from '@/shared/plan/stage'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import type { GateSignatureEntry, ProgrammeState } from './programme-state'
import type { Finding } from '@/shared/rules/finding'
import { hasFirstForm } from './first-form-content'
import { firstGateDigests } from './first-gate-content'
import { gateSubstance } from './gate-substance'
import type { ItemState } from './item-status'

/** A gate is signed in this order; quality signs last. */
export const GATE_SIGNATORIES: readonly Department[] = ['design', 'production', 'quality']

/** What each status of a gate means to whoever comes after it. */
export const GATE_STANDINGS = {
  blocked: { isOpen: false, wasOpen: false, message: 'is not open' },
  ready: { isOpen: false, wasOpen: false, message: 'is not open' },
  'part signed': { isOpen: false, wasOpen: false, message: 'is not open' },
  open: { isOpen: true, wasOpen: true, message: 'is open' },
  lapsed: {
    isOpen: false,
    wasOpen: true,
    message: 'no longer stands and must be signed again',
  },
} as const satisfies Record<string, GateMeaning>
export type GateStatus = keyof typeof GATE_STANDINGS

interface GateMeaning {
  readonly isOpen: boolean
  /** Whether all three have signed it once: after the last gate the programme is in service. */
  readonly wasOpen: boolean
  /** As the gate after it says. */
  readonly message: string
}

/** One open point of a gate, with the item it belongs to when there is one. */
export interface Blocker {
  readonly kind: 'gate' | 'item'
  readonly itemKey: string | null
  readonly title: string
  readonly message: string
  /** What the shortfall is about, for the link: see Shortfall. */
  readonly openPoint: { readonly kind: string; readonly target: string } | null
}

export interface GateState {
  readonly stage: Stage
  readonly status: GateStatus
  readonly blockers: readonly Blocker[]
  /** Newest signature of each department, and whether it covers the stage as it stands. */
  readonly signatures: readonly {
    readonly department: Department
    readonly signature: GateSignatureEntry | null
    readonly holds: boolean
  }[]
  readonly signedContent: string
  readonly digest: string
}

/** The form of the covers written now; the first had no number, and the items' digests in their first form. */
const GATE_COVER_FORM = 2

/** The four gates, each resting on the one before. */
export function gateStatesOf(
  state: ProgrammeState,
  items: readonly ItemState[],
  findings: ReadonlyMap<string, Finding>,
): GateState[] {
  const firstDigest = firstGateDigests(state, items, findings)
  const gates: GateState[] = []
  for (const stage of STAGES) {
    const before = gates.find((gate) => gate.stage === stageBefore(stage))
    gates.push(gateStateOf(stage, state, items, before, firstDigest))
  }
  return gates
}

function gateStateOf(
  stage: Stage,
  state: ProgrammeState,
  all: readonly ItemState[],
  before: GateState | undefined,
  firstDigest: (stage: Stage) => string | undefined,
): GateState {
  const items = all.filter(({ item }) => item.definition.stage === stage)
  const signedContent = canonicalJson({
    form: GATE_COVER_FORM,
    ...gateSubstance(stage, state, before?.digest, items, ({ digest }) => digest),
  })
  const digest = sha256(signedContent)
  const holds = (signature: GateSignatureEntry | null): boolean =>
    signature?.digest === digest ||
    (signature !== null && hasFirstForm(signature.signedContent) && signature.digest === firstDigest(stage))
  const blockers = [...gateBlocker(before), ...items.flatMap(itemBlockers)]
  const signatures = GATE_SIGNATORIES.map((department) => {
    const signature =
      state.gateSignatures.findLast((entry) => entry.stage === stage && entry.department === department) ??
      null
    return { department, signature, holds: holds(signature) }
  })
  return { stage, status: gateStatus(blockers, signatures), blockers, signatures, signedContent, digest }
}

/**
 * A gate is open only when nothing blocks it and all three signatures cover
 * the stage as it stands. Once quality has signed, a change shows as a gate
 * that no longer stands, never as one that was not signed.
 */
function gateStatus(blockers: readonly Blocker[], signatures: GateState['signatures']): GateStatus {
  const wasSigned = signatures.every(({ signature }) => signature)
  const allHold = signatures.every(({ holds }) => holds)
  if (blockers.length === 0 && allHold) return 'open'
  if (wasSigned) return 'lapsed'
  if (blockers.length > 0) return 'blocked'
  return signatures.some(({ holds }) => holds) ? 'part signed' : 'ready'
}

function gateBlocker(before: GateState | undefined): Blocker[] {
  if (!before || GATE_STANDINGS[before.status].isOpen) return []
  const message = `The ${STAGE_NAMES[before.stage].toLowerCase()} gate ${GATE_STANDINGS[before.status].message}.`
  return [
    { kind: 'gate', itemKey: null, title: `${STAGE_NAMES[before.stage]} gate`, message, openPoint: null },
  ]
}

const itemBlockers = ({ item, openPoints }: ItemState): Blocker[] =>
  openPoints.map(({ kind, target, message }) => ({
    kind: 'item',
    itemKey: item.definition.key,
    title: item.definition.title,
    message,
    openPoint: { kind, target },
  }))

/** Whose signature the gate waits for, when nothing blocks it. */
export const nextSignatory = (gate: GateState): Department | undefined =>
  gate.blockers.length > 0 ? undefined : gate.signatures.find(({ holds }) => !holds)?.department

/** Why this department cannot sign the gate now, in a sentence; undefined when it can. */
export function gateRefusal(gate: GateState, department: Department): string | undefined {
  if (gate.blockers.length > 0) {
    const byTitle = groupedBy(gate.blockers, ({ title }) => title)
    return `The gate is blocked. ${[...byTitle].map(([title, own]) => `${title}: ${own.map(({ message }) => message).join(' ')}`).join(' ')}`
  }
  if (gate.signatures.some((entry) => entry.department === department && entry.holds)) {
    return `${DEPARTMENT_NAMES[department]} has already signed this gate as it stands.`
  }
  const next = nextSignatory(gate)
  if (next && next !== department)
    return `${DEPARTMENT_NAMES[next]} signs before ${DEPARTMENT_NAMES[department]}.`
  return undefined
}
