import { useRef, type KeyboardEvent } from 'react'
import { findingAddress } from '@/app/addresses'
import { VERDICT_INK } from '@/app/ui/joint-drawing'
import { marginText } from '@/app/ui/margin-text'
import { formatAgainst } from '@/shared/quantity/format'
import type { Margin, Verdict } from '@/shared/rules/finding'
import { stepTo } from './step-to'
import { byItem, isDrawn, LIMIT_PLACE, placeOf, type Tick } from './tick'

/** What a finding would come to with the value tried. */
export interface Moved {
  readonly verdict: Verdict
  readonly margin: Margin | undefined
}

interface StripsProps {
  code: string
  /** The nearest to the limit first; by their place in it they are looked at. */
  ticks: readonly Tick[]
  looked: number
  onLook: (at: number) => void
  moved: ReadonlyMap<string, Moved> | undefined
}

/** A strip an item, all on one scale. The map is one stop of the Tab key; arrows go along, from the nearest on. */
export function Strips({ code, ticks, looked, onLook, moved }: StripsProps) {
  const map = useRef<HTMLDivElement>(null)
  const pressed = (event: KeyboardEvent) => {
    const to = stepTo(event.key, looked, ticks.length)
    const rule = to === undefined ? undefined : ticks[to]?.rule
    if (rule === undefined || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    map.current?.querySelector<HTMLElement>(`[data-rule="${rule}"]`)?.focus()
  }
  return (
    <div
      ref={map}
      role="group"
      aria-label="Margins, the nearest to its limit first"
      className="margin-strips"
      style={{ '--limit-at': `${LIMIT_PLACE * 100}%` } as React.CSSProperties}
      onKeyDown={pressed}
    >
      <div className="margin-scale" aria-hidden="true">
        <span className="margin-scale-beyond">beyond</span>
        <span className="margin-scale-limit">limit</span>
        <span className="margin-scale-safe">well inside</span>
      </div>
      {byItem(ticks).map(({ itemKey, item, ticks: own }) => (
        <div key={itemKey} className="margin-strip">
          <p className="margin-strip-name">{item}</p>
          <div className="margin-strip-scale">
            {own.map((tick) => {
              const at = ticks.indexOf(tick)
              return (
                <TickMark
                  key={tick.rule}
                  code={code}
                  tick={tick}
                  looked={at === looked}
                  onLook={() => onLook(at)}
                  then={moved?.get(tick.rule)}
                />
              )
            })}
          </div>
        </div>
      ))}
    </div>
  )
}

interface TickMarkProps {
  code: string
  tick: Tick
  looked: boolean
  onLook: () => void
  then: Moved | undefined
}

function TickMark({ code, tick: { rule, title, margin, verdict }, looked, onLook, then }: TickMarkProps) {
  const now = then ?? { verdict, margin }
  const drawn = now.margin && isDrawn(now.margin) ? now.margin : undefined
  const hasMoved = then !== undefined && drawn !== undefined && placeOf(drawn) !== placeOf(margin)
  const { found, limit } = formatAgainst(
    drawn?.found ?? margin.found,
    drawn?.limit ?? margin.limit,
    margin.unit,
  )
  return (
    <>
      {hasMoved && (
        <span className="margin-was" style={{ insetInlineStart: percent(margin) }} aria-hidden="true" />
      )}
      <a
        href={findingAddress(code, rule)}
        data-rule={rule}
        data-moved={hasMoved || undefined}
        data-verdict={now.verdict}
        tabIndex={looked ? 0 : -1}
        className={`margin-tick ${VERDICT_INK[now.verdict]}`}
        style={{ insetInlineStart: percent(drawn ?? margin) }}
        onFocus={onLook}
        onMouseEnter={onLook}
        aria-label={`${title}: ${now.verdict}, ${drawn ? `found ${found}, ${drawn.direction} ${limit}, ${marginText(drawn)}` : 'no margin'}`}
      />
    </>
  )
}

const percent = (margin: Margin): string => `${placeOf(margin) * 100}%`
