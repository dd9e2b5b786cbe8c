import type { GateStatus } from '@/shared/gate/gate'
import type { Status } from '@/shared/gate/item-status'
import { gateMark } from '@/app/ui/gate-mark'
import { STANDING_ORDER } from '@/app/ui/status-shape'
import { StatusMark } from '@/app/ui/status-mark'
import { Drawing } from './drawing'
import { routeLayout, RoutePicture, type RouteStage } from './route-picture'

/** One stage at a glance: how many items stand how, and how its gate stands. */
export type StageGlance = {
  name: string
  counts: Readonly<Partial<Record<Status, number>>>
  gate: GateStatus
  /** What the gate says beside its mark, such as "6 outstanding" or "signed 12 Jan 2026". */
  gateMessage: string
  /** Where the stage's part of the route card is. */
  href?: string
}

/**
 * The route from drawing to service: a conductor over the stages' lands, a gate
 * at the end of each, and one small land for every item. It is filled as far as
 * the gates are open. It runs across a desk and down a phone.
 */
export function FourStages({ title, stages }: { title: string; stages: readonly StageGlance[] }) {
  const route = stages.map(({ name, counts, gate }): RouteStage => ({ name, gate, items: itemsOf(counts) }))
  const across = routeLayout('across', route)
  const down = routeLayout('down', route)
  return (
    <Drawing
      title={title}
      description={stages.map(inWords).join(' ')}
      width={across.width}
      height={across.height}
      size="wide"
      upright={{
        width: down.width,
        height: down.height,
        picture: <RoutePicture layout={down} stages={route} />,
      }}
      numbersPlace="below"
      numbers={numbersOf(stages)}
    >
      <RoutePicture layout={across} stages={route} />
    </Drawing>
  )
}

const itemsOf = (counts: StageGlance['counts']): Status[] =>
  STANDING_ORDER.flatMap((status) => Array<Status>(counts[status] ?? 0).fill(status))

const present = ({ counts }: StageGlance): Status[] => STANDING_ORDER.filter((status) => counts[status])

function inWords(stage: StageGlance): string {
  const counts = present(stage).map((status) => `${stage.counts[status]} ${status}`)
  return `${stage.name}: ${counts.join(', ') || 'no items'}; gate ${stage.gate}, ${stage.gateMessage}.`
}

const numbersOf = (stages: readonly StageGlance[]) => ({
  columns: [
    { label: 'Stage' },
    { label: 'Items', set: 'text' as const },
    { label: 'Gate', set: 'text' as const },
    { label: 'Reason', set: 'text' as const },
  ],
  rows: stages.map((stage) => [
    stage.href ? <a href={stage.href}>{stage.name}</a> : stage.name,
    <span key="items" className="mark-row">
      {present(stage).map((status) => (
        <StatusMark key={status} status={status} count={stage.counts[status]} />
      ))}
    </span>,
    gateMark(stage.gate),
    stage.gateMessage,
  ]),
})
