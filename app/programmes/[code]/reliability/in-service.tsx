import { priced } from '@/app/ui/priced'
import { newLessonAddress, recordKindAddress } from '@/app/addresses'
import { Pareto } from '@/app/drawing/pareto'
import { RateOverTime } from '@/app/drawing/rate-over-time'
import { Month } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { fieldReturn } from '@/shared/records/kinds/field-return'
import { fieldTimeline, returnsByMonth } from '@/shared/reliability/field-shown'
import type { Known } from './known'
import { ReturnTable } from './return-table'

const CAUSES = fieldReturn.columns.cause.options

/** What serves, what came back and why, and the rate against the budget over time. */
export function InService({ view, known }: { view: ProgrammeView; known: Known }) {
  const { code } = view
  const { returns, exposures, target } = known
  const points = fieldTimeline(returns, exposures, target)
  const last = points.at(-1)
  return (
    <Section
      id="service"
      heading="In service"
      lead="Only returns traced to a solder joint count against the budget; a board that fails and does not come back is not seen."
      aside={
        <span className="mark-row">
          <a href={recordKindAddress(code, 'field-exposure')}>Exposure</a>
          <a href={recordKindAddress(code, 'field-return')}>Returns</a>
          <a href={newLessonAddress(code)}>Propose a lesson</a>
        </span>
      }
    >
      {last ? (
        <>
          <p className="prose">
            {`${formatNumber(last.boardHours, 7)} board-hours, ${formatNumber(last.boardHours * target.joints, 4)} joint-hours; ${last.failed} boards failed at a joint: ${formatQuantity(last.rate / target.joints, 'FIT', 3)} a joint (${formatQuantity(last.lower / target.joints, 'FIT', 3)} to ${formatQuantity(last.upper / target.joints, 'FIT', 3)}), allowed ${formatQuantity(target.jointFit, 'FIT', 3)}.`}
          </p>
          <RateOverTime
            title="What service has shown, and the budget"
            points={points}
            allowed={target.boardFit}
            confidencePct={target.confidence * 100}
          />
        </>
      ) : (
        <Empty title="No boards in service yet">
          <a href={recordKindAddress(code, 'field-exposure')}>Record boards in service</a> and their hours,
          month by month: returns are counted against them.
        </Empty>
      )}
      {returns.length > 0 && (
        <>
          <ReturnTable view={view} returns={returns} />
          <div className="picture-row">
            <Pareto
              title="Returns by cause"
              what="boards"
              counts={CAUSES.map(({ value, label }) => ({
                name: label,
                count: returns.filter(({ cause }) => cause === value).length,
              }))}
            />
            <RuledTable
              caption="Returns by month"
              rows={returnsByMonth(returns)}
              rowKey={({ month }) => month}
              columns={[
                { label: 'Month', set: 'shrink', names: true, cell: ({ month }) => <Month at={month} /> },
                ...CAUSES.filter(({ value }) => returns.some(({ cause }) => cause === value)).map(
                  ({ value, label }) => ({
                    label,
                    set: 'number' as const,
                    cell: ({ counts }: ReturnType<typeof returnsByMonth>[number]) =>
                      String(counts.get(value) ?? 0),
                  }),
                ),
                {
                  label: priced('Cost'),
                  set: 'number',
                  cell: ({ cost }) => formatQuantity(cost, 'currency'),
                },
              ]}
            />
          </div>
        </>
      )}
    </Section>
  )
}
