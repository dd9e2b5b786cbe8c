import type { Requirement } from '@/shared/plan/requirement'
import type { Finding } from '@/shared/rules/finding'
import { previewBetween, type ChangePreview } from './change-preview'
import { confirmationRefusal } from './confirmation'
import { itemStateFor, judgeProgramme, type Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'
import type { NoticeChange } from './proposed-change'

/** What all changes of a notice would do together. */
export interface NoticeEffect {
  readonly preview: ChangePreview
  /** Of the approvals that lapse: which their signatories may confirm, and why others must be given again. */
  readonly lapsing: readonly {
    readonly itemKey: string
    readonly item: string
    readonly department: string
    readonly personName: string
    readonly again: string | undefined
  }[]
  /** Codes of the lots that a finding names which turns or moves. */
  readonly lots: readonly string[]
}

/** Judges the programme with every change of a notice made, and compares; nothing is stored. */
export function noticeEffect(
  state: ProgrammeState,
  before: Judgement,
  changes: readonly Pick<NoticeChange, 'id' | 'change' | 'reason'>[],
): NoticeEffect {
  const values = new Map([
    ...state.facts.values,
    ...changes.flatMap(({ change }) =>
      change.kind === 'value' ? [[change.parameter, change.value] as const] : [],
    ),
  ])
  const requirements = changes.reduce(withChange, state.facts.requirements)
  const changed = { ...state, facts: { ...state.facts, values, requirements } }
  const after = changes.length === 0 ? before : judgeProgramme(changed, before)
  const preview = previewBetween(state, before, after)
  return {
    preview,
    lapsing: preview.approvals.map((entry) => ({ ...entry, again: againBecause(entry, after) })),
    lots: lotsNamed(state, preview, before, after),
  }
}

function withChange(
  requirements: readonly Requirement[],
  { id, change, reason }: Pick<NoticeChange, 'id' | 'change' | 'reason'>,
): readonly Requirement[] {
  switch (change.kind) {
    case 'value':
      return requirements
    case 'requirement': {
      const { kind: _, ...stated } = change
      return [...requirements, { ...stated, id, reason, lesson: null }]
    }
    case 'withdrawal':
      return requirements.filter((entry) => entry.id !== change.requirement)
  }
}

function againBecause(
  { itemKey, department }: ChangePreview['approvals'][number],
  after: Judgement,
): string | undefined {
  const item = itemStateFor(after, itemKey)
  const own = item?.approvals.find((entry) => entry.department === department)?.approval
  if (!item || !own) return undefined
  const blocked = item.openPoints.find(({ kind }) => kind !== 'approval')
  return blocked?.message ?? confirmationRefusal(own, item, after.findings)
}

function lotsNamed(
  state: ProgrammeState,
  { turned, moved }: ChangePreview,
  ...judgements: readonly Judgement[]
): string[] {
  const findings = [...turned, ...moved].flatMap(({ rule }) =>
    judgements.flatMap(({ findings: found }) => found.get(rule) ?? []),
  )
  return state.facts.records.lots
    .map(({ code }) => code)
    .filter((code) => findings.some((finding) => namesLot(finding, code)))
}

const namesLot = ({ measured, parts = [] }: Finding, code: string): boolean =>
  parts.some(({ about, subject }) => (about ? Object.values(about).includes(code) : subject === code)) ||
  Object.values(measured ?? {}).some((value) =>
    Array.isArray(value) ? value.includes(code) : value === code,
  )
