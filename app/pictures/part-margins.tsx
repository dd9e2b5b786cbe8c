import { MarginBars } from '@/app/drawing/margin-bars'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Margin } from '@/shared/rules/finding'
import { MAX_DRAWN } from './drawn-in-part'

interface PartMarginsProps {
  view: ProgrammeView
  /** The rule whose parts are drawn. */
  rule: string
  title: string
}

/** One finding's parts against their limits, least room first; nothing where fewer than two have a margin. */
export function PartMargins({ view, rule, title }: PartMarginsProps) {
  const parts = view.judgement.findings.get(rule)?.parts ?? []
  const margins = parts.flatMap(({ subject, margin }) => (margin ? [{ name: subject, margin }] : []))
  if (margins.length < 2) return null
  const closest = margins.toSorted((one, other) => nearness(other.margin) - nearness(one.margin))
  return <MarginBars title={title} margins={closest.slice(0, MAX_DRAWN)} />
}

/** How near to its limit, or how far beyond it, in parts of the limit. */
const nearness = ({ found, limit, direction }: Margin): number =>
  (direction === 'at most' ? found - limit : limit - found) / (Math.abs(limit) || 1)

/** Ring and depth of every hole. */
export const HoleMargins = ({ view }: { view: ProgrammeView }) => (
  <div className="picture-row">
    <PartMargins view={view} rule="annular-ring" title="Ring left round each hole" />
    <PartMargins view={view} rule="aspect-ratio" title="Depth of each hole for its width" />
  </div>
)

/** Gold in every joint that has any. */
export const LeadFinishMargins = ({ view }: { view: ProgrammeView }) => (
  <div className="picture-row">
    <PartMargins view={view} rule="gold-fraction" title="Gold in each joint" />
  </div>
)
