'use client'
import { useMemo } from 'react'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { changePreview } from '@/shared/gate/change-preview'
import type { Parameter } from '@/shared/plan/parameter'
import type { Requirement } from '@/shared/plan/requirement'

interface LiveFindingsProps {
  parameter: Parameter
  draft: unknown
  facts: { values: Readonly<Record<string, unknown>>; requirements: readonly Requirement[]; today: string }
}

/** What the value as typed would do to the findings that rest on the specification alone. */
export function LiveFindings({ parameter, draft, facts }: LiveFindingsProps) {
  const values = useMemo(() => new Map(Object.entries(facts.values)), [facts.values])
  if (draft === undefined) return null
  const parsed = parameter.schema.safeParse(draft)
  if (!parsed.success) {
    return (
      <p className="field-hint" role="status">
        {parsed.error.issues[0]?.message}
      </p>
    )
  }
  const { turned, unchanged, unseen } = changePreview(parameter, parsed.data, { ...facts, values })
  return (
    <div className="live-findings" role="status">
      {turned.length === 0 && (
        <p>
          No finding turns with this value{unchanged.length > 0 && `; ${unchanged.length} stay as they are`}.
        </p>
      )}
      {turned.map(({ rule, before, after }) => (
        <p key={rule.id}>
          <strong>{rule.title}:</strong> <VerdictMark verdict={before.verdict} /> →{' '}
          <VerdictMark verdict={after.verdict} /> {after.found}
          {after.verdict === 'fails' && after.remedy && ` ${after.remedy.says}`}
        </p>
      ))}
      {unseen.length > 0 && (
        <p className="field-hint">
          Judged on the server when saved, since they read records:{' '}
          {unseen.map(({ title }) => title).join('; ')}.
        </p>
      )}
      <p className="field-hint">
        Saving it lapses the approvals of every item that rests on {parameter.label}, and the gates behind
        them.
      </p>
    </div>
  )
}
