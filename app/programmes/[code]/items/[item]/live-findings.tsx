'use client'
import { useEffect, useState } from 'react'
import type { LapsedSignatures } from '@/shared/gate/lapsed-signatures'
import type { SpecificationFacts } from '@/shared/gate/live-turns'
import type { LiveAnswer } from './judge-in-browser'
import { WhatWouldChange } from './what-would-change'

interface LiveFindingsProps {
  parameter: string
  /** What is typed so far; undefined until somebody does. */
  draft: unknown
  facts: SpecificationFacts
  reach: LapsedSignatures
}

const PAUSE_MS = 150

/** While a value is typed: what it would do to the findings, by the rules that judge on the server. */
export function LiveFindings({ parameter, draft, facts, reach }: LiveFindingsProps) {
  const [answer, setAnswer] = useState<LiveAnswer>()
  useEffect(() => {
    if (draft === undefined) return undefined
    let wanted = true
    const judge = async () => {
      const { judgeInBrowser } = await import('./judge-in-browser')
      if (wanted) setAnswer(judgeInBrowser(parameter, draft, facts))
    }
    const timer = setTimeout(() => void judge(), PAUSE_MS)
    return () => {
      wanted = false
      clearTimeout(timer)
    }
  }, [parameter, draft, facts])
  return (
    <div role="status" className="would-live">
      {draft !== undefined && answer && <Answer answer={answer} reach={reach} />}
    </div>
  )
}

function Answer({ answer, reach }: { answer: LiveAnswer; reach: LapsedSignatures }) {
  if ('message' in answer) return <p className="field-hint">{answer.message}</p>
  const { turned, steady, unseen } = answer.turns
  return (
    <>
      <p className="would-head">As typed</p>
      <WhatWouldChange turned={turned} moved={steady} reach={reach} />
      {unseen.length > 0 && (
        <p className="field-hint">Preview judges these too, which read records: {unseen.join('; ')}.</p>
      )}
    </>
  )
}
