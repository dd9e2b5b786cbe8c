'use client'
import { useState } from 'react'
import type { SpecificationFacts } from '@/shared/gate/live-turns'
import { Strips } from './strips'
import type { Tick } from './tick'
import { TickTold } from './tick-told'
import { useTried } from './use-tried'
import type { ValueToTry } from './values-to-try'
import { WhatIf } from './what-if'

interface MarginMapProps {
  code: string
  ticks: readonly Tick[]
  values: readonly ValueToTry[]
  facts: SpecificationFacts
}

/** Every margin as a tick on one scale, the one looked at in words, and what another value would do to them. */
export function MarginMap({ code, ticks, values, facts }: MarginMapProps) {
  const [looked, setLooked] = useState(0)
  const [tried, setTried] = useState<{ key: string; text: string }>()
  const value = values.find(({ key }) => key === tried?.key)
  const answer = useTried(value, tried?.text ?? '', facts)
  const moved = answer && 'moved' in answer ? answer.moved : undefined
  const tick = ticks[looked]
  return (
    <div className="margin-map">
      <Strips code={code} ticks={ticks} looked={looked} onLook={setLooked} moved={moved} />
      <div className="margin-side">
        {tick && <TickTold code={code} tick={tick} then={moved?.get(tick.rule)} />}
        <WhatIf
          code={code}
          values={values}
          read={tick?.reads ?? []}
          tried={tried}
          onTry={setTried}
          value={value}
          answer={answer}
        />
      </div>
    </div>
  )
}
