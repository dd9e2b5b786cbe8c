import { actionAddress, concessionAddress, findingAddress, reviseAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import type { ItemState, Shortfall } from '@/shared/gate/standing'

/** What keeps the item from being settled, each with a link to where that is done. */
export function OpenPoints({ code, state }: { code: string; state: ItemState }) {
  if (state.standing === 'set aside')
    return (
      <Notice kind="info" title="Set aside">
        {state.item.setAside?.reason}
      </Notice>
    )
  if (state.shortfalls.length === 0)
    return (
      <Notice kind="success" title="Settled">
        Nothing is missing, and every department has approved it as it stands.
      </Notice>
    )
  return (
    <Notice
      kind={state.standing === 'lapsed' ? 'warning' : 'info'}
      title={state.standing === 'ready' ? 'Ready to approve' : 'Still short of'}
    >
      <ul>
        {state.shortfalls.map((shortfall) => (
          <li key={`${shortfall.kind} ${shortfall.target}`}>
            <a href={placeOf(code, state.item.definition.key, shortfall)}>{shortfall.says}</a>
          </li>
        ))}
      </ul>
    </Notice>
  )
}

function placeOf(code: string, item: string, { kind, target }: Shortfall): string {
  switch (kind) {
    case 'finding':
      return findingAddress(code, target)
    case 'action':
      return actionAddress(code, target)
    case 'concession':
      return concessionAddress(code, target)
    case 'value':
      return reviseAddress(code, item, target)
    case 'evidence':
      return '#evidence'
    case 'approval':
      return '#approvals'
    case 'set aside':
      return '#set-aside'
  }
}
