import { actionAddress, concessionAddress, reviseAddress } from '@/app/addresses'
import { pointName } from '@/app/programmes/[code]/point-name'
import { capitalised } from '@/shared/quantity/capitalised'
import { Disclosure } from '@/app/ui/disclosure'
import { Notice } from '@/app/ui/notice'
import type { SignKind } from '@/app/ui/sign'
import type { ItemState, OpenPoint, Status } from '@/shared/gate/item-status'

interface OpenPointsProps {
  code: string
  state: ItemState
}

/** What keeps the item from being settled, each with a link to where that is done. */
export function OpenPoints({ code, state }: OpenPointsProps) {
  const { kind, title, text } = SAID[state.status]
  return (
    <Notice kind={kind} title={title}>
      {text?.(state) ?? (
        <>
          <PointList {...{ code, state }} points={state.openPoints.slice(0, SHOWN)} />
          {state.openPoints.length > SHOWN && (
            <Disclosure summary={`${state.openPoints.length - SHOWN} more`}>
              <PointList {...{ code, state }} points={state.openPoints.slice(SHOWN)} />
            </Disclosure>
          )}
        </>
      )}
    </Notice>
  )
}

/** So many stand in sight; the rest unfold. */
const SHOWN = 8

/** Each by its name; what is wrong with it is told where the link leads. */
const PointList = ({ code, state, points }: OpenPointsProps & { points: readonly OpenPoint[] }) => (
  <ul className="open-points">
    {points.map((point) => (
      <li key={`${point.kind} ${point.target}`}>
        <a href={placeOf(code, state.item.definition.key, point)} title={point.message}>
          {capitalised(pointName(point))}
        </a>
      </li>
    ))}
  </ul>
)

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
      return `#finding-${target}`
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
