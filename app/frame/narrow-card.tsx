import * as to from '@/app/addresses'
import { gateMark } from '@/app/ui/gate-mark'
import { statusBox } from '@/app/ui/status-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { GATE_STANDINGS, type GateState } from '@/shared/gate/gate'
import { isSettled, type ItemState } from '@/shared/gate/item-status'
import { stageAtWork } from '@/shared/gate/stage-at-work'
import { STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { NARROW_CARD } from './narrow-card-id'

interface NarrowCardProps {
  view: ProgrammeView
  /** Key of the item that the page is about. */
  item?: string | undefined
}

/**
 * The route card, narrow, beside every page of a programme: each item's box as it is stamped, those of one's own
 * department outlined, and what is outstanding at each gate. The stage at work is unfolded; on a phone the card is
 * a drawer.
 */
export function NarrowCard({ view, item }: NarrowCardProps) {
  const { items, gates } = view.judgement
  const unfolded =
    items.find((entry) => entry.item.definition.key === item)?.item.definition.stage ??
    stageAtWork(view.judgement)
  return (
    <nav id={NARROW_CARD} className="narrow-card" popover="auto" aria-label="Items">
      {STAGES.map((stage) => (
        <CardStage
          key={stage}
          {...{ view, stage, item }}
          items={items.filter((entry) => entry.item.definition.stage === stage)}
          gate={gates.find((entry) => entry.stage === stage)}
          open={stage === unfolded}
        />
      ))}
    </nav>
  )
}

interface CardStageProps extends NarrowCardProps {
  stage: Stage
  items: readonly ItemState[]
  gate: GateState | undefined
  open: boolean
}

function CardStage({ view, stage, item, items, gate, open }: CardStageProps) {
  const settled = items.filter(isSettled).length
  return (
    <details className="card-stage" open={open} suppressHydrationWarning>
      <summary>
        {STAGE_NAMES[stage]}
        <span className="card-count">
          {settled} of {items.length}
          <span className="sr-only"> settled</span>
        </span>
      </summary>
      <ol>
        {items.map((entry) => (
          <CardItem key={entry.item.definition.key} view={view} state={entry} current={item} />
        ))}
      </ol>
      {gate && (
        <a className="card-gate" href={to.gateAddress(view.code, stage)}>
          <span>Gate: {gateMark(gate.status)}</span>
          {!GATE_STANDINGS[gate.status].isOpen && gate.blockers.length > 0 && (
            <span className="card-count">
              {gate.blockers.length}
              <span className="sr-only"> outstanding</span>
            </span>
          )}
        </a>
      )}
    </details>
  )
}

interface CardItemProps {
  view: ProgrammeView
  state: ItemState
  current: string | undefined
}

function CardItem({ view: { code, actor }, state, current }: CardItemProps) {
  const { key, title, owner } = state.item.definition
  const mine = !isSettled(state) && actor.departments.includes(owner)
  return (
    <li className={mine ? 'card-mine' : undefined}>
      <a href={to.itemAddress(code, key)} aria-current={key === current ? 'page' : undefined}>
        {statusBox(state.status)}
        {title}
        {mine && <span className="sr-only">, your department’s</span>}
      </a>
    </li>
  )
}
