import { actionAddress, concessionAddress, findingAddress, reviseAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import type { SignKind } from '@/app/ui/sign'
import type { ItemState, OpenPoint, Status } from '@/shared/gate/item-status'

/** What keeps the item from being settled, each with a link to where that is done. */
export function OpenPoints({ code, state }: { code: string; state: ItemState }) {
  const { kind, title, text } = SAID[state.status]
  return (
    <Notice kind={kind} title={title}>
      {text?.(state) ?? (
        <ul>
          {state.openPoints.map((openPoint) => (
            <li key={`${openPoint.kind} ${openPoint.target}`}>
              <a href={placeOf(code, state.item.definition.key, openPoint)}>{openPoint.message}</a>
            </li>
          ))}
        </ul>
      )}
    </Notice>
  )
}

interface Said {
  readonly kind: SignKind
  readonly title: string
  /** Instead of the list of what is missing. */
  readonly text?: (state: ItemState) => string
}

const SHORT = 'Outstanding before approval'
const SAID: Readonly<Record<Status, Said>> = {
  open: { kind: 'info', title: SHORT },
  incomplete: { kind: 'info', title: SHORT },
  lapsed: { kind: 'warning', title: SHORT },
  ready: { kind: 'info', title: 'Ready to approve' },
  approved: {
    kind: 'success',
    title: 'Approved, nothing outstanding',
    text: () => 'Nothing is missing, and every department has approved it as it stands.',
  },
  'not applicable': {
    kind: 'info',
    title: 'Not applicable',
    text: ({ item }) => item.tailoredOut?.reason ?? '',
  },
}

function placeOf(code: string, item: string, { kind, target }: OpenPoint): string {
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
    case 'not applicable':
      return '#set-aside'
  }
}
