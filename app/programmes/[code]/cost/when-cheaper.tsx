import { priced } from '@/app/ui/priced'
import { parameterAddress } from '@/app/addresses'
import { ChangeCostSteps } from '@/app/drawing/change-cost-steps'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { lessAmount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { Costs } from './costs'

/** What a change would have cost at each gate, and what those made late did cost. */
export function WhenCheaper({
  costs: { boards, steps, gates, unit, late },
  code,
}: {
  costs: Costs
  code: string
}) {
  const today = steps.at(-1)
  const rows = [
    ...gates.map(({ on, name, change }) => ({ what: `At the ${name.toLowerCase()} gate`, on, change })),
    ...(today ? [{ what: 'Today', on: today.on, change: today }] : []),
  ]
  const assumed = [
    unit.rework && `a rework ${amountInWords(unit.rework.amount)} (${unit.rework.basis})`,
    unit.fieldRepair &&
      `a repair in service ${amountInWords(unit.fieldRepair.amount)} (${unit.fieldRepair.basis})`,
  ].filter(Boolean)
  return (
    <Section
      heading="Cost of a late change"
      lead={`One joint changed on every board there is: a rework for each at hand, a repair for each that serves. ${assumed.length > 0 ? `Taken: ${assumed.join(', ')}.` : ''} New approvals, scrapped parts and tests done again are not counted: it is the least it would cost.`}
    >
      {steps.length < 2 || !steps.some(({ cost }) => cost.to > 0) ? (
        <Empty
          title={boards > 0 ? 'What a change costs cannot be said' : 'A change still costs the drawing only'}
        >
          {boards > 0 ? (
            <>
              Nothing says what a rework costs: give{' '}
              <a href={parameterAddress(code, workingHourCost.key)}>the cost of a working hour</a>, or the
              cost table of the processes.
            </>
          ) : (
            'No board is soldered yet. This is the cheapest time to change.'
          )}
        </Empty>
      ) : (
        <>
          <ChangeCostSteps
            title="Cost of one change, by date"
            steps={steps}
            gates={gates}
            changes={late.flatMap(({ revision, change }) =>
              change ? [{ on: change.on, name: revision.parameter, cost: change.cost }] : [],
            )}
          />
          <RuledTable
            caption="The same change at each gate"
            rows={rows}
            rowKey={({ what }) => what}
            columns={[
              { label: 'When', names: true, cell: ({ what }) => what },
              { label: 'On', set: 'shrink', cell: ({ on }) => <Day at={on} /> },
              { label: 'Boards made', set: 'number', cell: ({ change }) => change?.made ?? '–' },
              { label: 'In service', set: 'number', cell: ({ change }) => change?.serving ?? '–' },
              {
                label: priced('Cost of the change'),
                set: 'number',
                cell: ({ change }) => (change ? amountInWords(change.cost) : 'not known'),
              },
              {
                label: priced('Extra cost today'),
                set: 'number',
                cell: ({ change }) =>
                  change && today ? amountInWords(lessAmount(today.cost, change.cost)) : 'not known',
              },
            ]}
          />
        </>
      )}
      <LateChanges late={late} code={code} />
    </Section>
  )
}

/** Values that were changed after they had been given once. */
function LateChanges({ late, code }: { late: Costs['late']; code: string }) {
  if (late.length === 0)
    return <p className="field-hint">No specified value was changed after it had been given.</p>
  return (
    <RuledTable
      caption="Values changed, and what was already made"
      rows={late}
      rowKey={({ revision }) => `${revision.parameter} ${revision.number}`}
      columns={[
        {
          label: 'Value',
          names: true,
          cell: ({ revision: { parameter } }) => (
            <a href={parameterAddress(code, parameter)}>{findParameter(parameter)?.label ?? parameter}</a>
          ),
        },
        { label: 'On', set: 'shrink', cell: ({ revision }) => <Day at={revision.at} /> },
        { label: 'Why', cell: ({ revision }) => revision.reason },
        { label: 'Boards made by then', set: 'number', cell: ({ change }) => change?.made ?? '–' },
        {
          label: priced('If it touched a joint, at least'),
          set: 'number',
          cell: ({ change }) => (change ? amountInWords(change.cost) : 'not known'),
        },
      ]}
    />
  )
}
