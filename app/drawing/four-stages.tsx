import type { GateStanding } from '@/shared/gate/gate'
import type { Standing } from '@/shared/gate/standing'
import { gateMark } from '@/app/ui/gate-mark'
import { STANDING_ORDER } from '@/app/ui/standing-shape'
import { StandingMark } from '@/app/ui/standing-mark'
import { Drawing } from './drawing'
import { routeLayout, RoutePicture, type RouteStage } from './route-picture'

/** One stage at a glance: how many items stand how, and how its gate stands. */
export type StageGlance = {
  name: string
  counts: Readonly<Partial<Record<Standing, number>>>
  gate: GateStanding
  /** What the gate says beside its mark, such as "6 in the way" or "signed 12 Jan 2026". */
  gateSays: string
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

const itemsOf = (counts: StageGlance['counts']): Standing[] =>
  STANDING_ORDER.flatMap((standing) => Array<Standing>(counts[standing] ?? 0).fill(standing))

const present = ({ counts }: StageGlance): Standing[] => STANDING_ORDER.filter((standing) => counts[standing])

function inWords(stage: StageGlance): string {
  const counts = present(stage).map((standing) => `${stage.counts[standing]} ${standing}`)
  return `${stage.name}: ${counts.join(', ') || 'no items'}; gate ${stage.gate}, ${stage.gateSays}.`
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
      {present(stage).map((standing) => (
        <StandingMark key={standing} standing={standing} count={stage.counts[standing]} />
      ))}
    </span>,
    gateMark(stage.gate),
    stage.gateSays,
  ]),
})
