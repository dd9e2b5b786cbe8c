import { pointName } from './point-name'
import { findingAddress, gateAddress, itemAddress, signListAddress } from '@/app/addresses'
import { FourStages, type StageGlance } from '@/app/drawing/four-stages'
import { departmentTag } from '@/app/ui/department-tag'
import { gateMark } from '@/app/ui/gate-mark'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { statusMark } from '@/app/ui/status-mark'
import { verdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { dateAtWorks } from '@/lib/settings/works'
import type { GateState } from '@/shared/gate/gate'
import type { ItemState } from '@/shared/gate/item-status'
import { approvableBy } from '@/shared/gate/sign-list'
import { STAGE_AIMS, STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { VERDICTS } from '@/shared/rules/finding'

/** The four stages as one sheet: items, owners, status, findings, and each gate with what blocks it. */
export function RouteCard({ view }: { view: ProgrammeView }) {
  const stages = STAGES.map((stage) => ({
    stage,
    items: view.judgement.items.filter(({ item }) => item.definition.stage === stage),
    gate: view.judgement.gates.find((gate) => gate.stage === stage),
  }))
  const waiting = toSignByStage(view)
  return (
    <>
      <FourStages
        title="The four stages at a glance"
        stages={stages.map(({ stage, items, gate }) => glance(stage, items, gate))}
      />
      {stages.map(({ stage, items, gate }) => (
        <Section
          key={stage}
          id={stage}
          heading={STAGE_NAMES[stage]}
          lead={STAGE_AIMS[stage]}
          aside={
            <>
              {(waiting.get(stage) ?? 0) > 0 && (
                <a href={signListAddress(view.code, stage)}>{waiting.get(stage)} to sign</a>
              )}
              {gate && <a href={gateAddress(view.code, stage)}>Gate: {gateMark(gate.status)}</a>}
            </>
          }
        >
          <StageItems view={view} stage={stage} items={items} />
        </Section>
      ))}
    </>
  )
}

/** How many items of each stage this person can approve now, for any of their departments. */
function toSignByStage({ actor, state, judgement }: ProgrammeView): ReadonlyMap<Stage, number> {
  const items = actor.departments.flatMap((own) => approvableBy(actor, own, state, judgement))
  return new Map(
    STAGES.map((stage) => [stage, items.filter(({ item }) => item.definition.stage === stage).length]),
  )
}

function StageItems({
  view,
  stage,
  items,
}: {
  view: ProgrammeView
  stage: Stage
  items: readonly ItemState[]
}) {
  return (
    <div className="route-card-items">
      <RuledTable
        caption={`Items of the ${STAGE_NAMES[stage].toLowerCase()} stage`}
        captionHidden
        rows={items}
        rowKey={({ item }) => item.definition.key}
        columns={[
          {
            label: 'Item',
            names: true,
            cell: ({ item }) => (
              <a href={itemAddress(view.code, item.definition.key)}>{item.definition.title}</a>
            ),
          },
          {
            label: 'Owner',
            set: 'shrink',
            cell: ({ item }) => departmentTag(item.definition.owner),
          },
          { label: 'Status', set: 'shrink', cell: ({ status }) => statusMark(status) },
          { label: 'Findings', cell: ({ item }) => <Findings view={view} rules={item.definition.rules} /> },
          { label: 'Outstanding', cell: openPointsOf },
        ]}
      />
    </div>
  )
}

/** The findings by verdict, worst first; each leads to the one it counts when it is alone. */
function Findings({ view, rules }: { view: ProgrammeView; rules: ItemState['item']['definition']['rules'] }) {
  const byVerdict = [...VERDICTS]
    .reverse()
    .map((verdict) => ({
      verdict,
      found: rules.filter(({ id }) => view.judgement.findings.get(id)?.verdict === verdict),
    }))
    .filter(({ found }) => found.length > 0)
  if (byVerdict.length === 0) return <span className="faint">no rules</span>
  return (
    <span className="mark-row">
      {byVerdict.map(({ verdict, found }) => (
        <a key={verdict} href={findingAddress(view.code, found[0]?.id ?? '')}>
          {found.length > 1 && <span className="mark-count">{found.length}</span>}
          {verdictMark(verdict)}
        </a>
      ))}
    </span>
  )
}

/** Where nothing is missing the cell stays empty, and no line of a phone’s card is spent on it. */
function openPointsOf({ openPoints }: Pick<ItemState, 'openPoints'>) {
  const [first, ...others] = openPoints
  if (!first) return null
  return (
    <>
      {first.message}
      {others.length > 0 && ` Also: ${others.map(pointName).join('; ')}.`}
    </>
  )
}

function glance(stage: Stage, items: readonly ItemState[], gate: GateState | undefined): StageGlance {
  const counts: Partial<Record<ItemState['status'], number>> = {}
  for (const { status } of items) counts[status] = (counts[status] ?? 0) + 1
  return {
    name: STAGE_NAMES[stage],
    counts,
    gate: gate?.status ?? 'blocked',
    gateMessage: gateMessage(gate),
    href: `#${stage}`,
  }
}

function gateMessage(gate: GateState | undefined): string {
  if (!gate) return ''
  const signed = gate.signatures.at(-1)?.signature
  switch (gate.status) {
    case 'open':
      return `signed ${signed ? dateAtWorks(new Date(signed.at)) : ''}`
    case 'lapsed':
      return 'changed since it was signed'
    case 'ready':
      return 'nothing outstanding'
    case 'part signed':
      return `${gate.signatures.filter(({ holds }) => holds).length} of 3 signatures`
    case 'blocked':
      return `${gate.blockers.length} outstanding`
  }
}
