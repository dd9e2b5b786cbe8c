import { findingAddress, itemAddress } from '@/app/addresses'
import { MarginBar } from '@/app/ui/margin-bar'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { STAGE_NAMES } from '@/shared/plan/stage'
import type { Moved } from './strips'
import { isDrawn, type Tick } from './tick'

interface TickToldProps {
  code: string
  tick: Tick
  then: Moved | undefined
}

/** The tick that is looked at: what was found, the limit, the margin, and where it is worked out. */
export function TickTold({
  code,
  tick: { rule, title, item, itemKey, stage, verdict, margin },
  then,
}: TickToldProps) {
  return (
    <div className="margin-told">
      <h2>
        <a href={findingAddress(code, rule)}>{title}</a>
      </h2>
      <p className="faint">
        <a href={itemAddress(code, itemKey)}>{item}</a>, {STAGE_NAMES[stage].toLowerCase()}
      </p>
      <VerdictMark verdict={verdict} />
      <MarginBar margin={margin} />
      {then && (
        <>
          <p className="would-head">With the value tried</p>
          <VerdictMark verdict={then.verdict} />
          {then.margin && isDrawn(then.margin) && <MarginBar margin={then.margin} />}
        </>
      )}
    </div>
  )
}
