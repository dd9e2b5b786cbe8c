import { works } from '@/lib/settings/works'
import { priced } from '@/app/ui/priced'
import { parameterAddress, recordKindAddress } from '@/app/addresses'
import { CostClasses } from '@/app/drawing/cost-classes'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { COST_CLASSES } from '@/shared/records/kinds/quality-cost'
import type { Costs } from './costs'

const classNamed = (costClass: string) => COST_CLASSES.find(({ value }) => value === costClass)

/** Prevention, appraisal, failure found here and in service. */
export function ByClass({ costs: { summary, hourCost }, code }: { costs: Costs; code: string }) {
  return (
    <Section
      heading="By class"
      lead={
        <>
          Sums entered, rework by the hour with its material, and returns with a cost.{' '}
          {hourCost === undefined ? (
            <>
              <a href={parameterAddress(code, workingHourCost.key)}>The cost of a working hour</a> is not
              given: what rework costs is not known.
            </>
          ) : (
            <>An hour costs {[formatNumber(hourCost), works().currency].filter(Boolean).join(' ')}.</>
          )}
        </>
      }
      aside={
        <span className="mark-row">
          <a href={recordKindAddress(code, 'quality-cost')}>Sums</a>
          <a href={recordKindAddress(code, 'rework')}>Rework</a>
          <a href={recordKindAddress(code, 'field-return')}>Returns</a>
        </span>
      }
    >
      {summary.total === 0 ? (
        <Empty title="Nothing is recorded yet">
          <a href={recordKindAddress(code, 'quality-cost')}>Record what was spent</a> on preventing and
          finding defects; rework and returns are added from their own records.
        </Empty>
      ) : (
        <>
          <CostClasses
            title="Quality costs by class"
            classes={summary.byClass.map(({ costClass, amount, share }) => ({
              name: classNamed(costClass)?.label ?? costClass,
              amount,
              share,
              failure: classNamed(costClass)?.ofFailure ?? false,
            }))}
          />
          <div className="picture-row">
            <RuledTable
              caption="By month of spending"
              rows={summary.byMonth}
              rowKey={({ month }) => month}
              columns={[
                { label: 'Month', names: true, cell: ({ month }) => month },
                { label: priced('Amount'), set: 'number', cell: ({ amount }) => formatNumber(amount) },
              ]}
            />
            {summary.reworkByDefect.length > 0 && (
              <RuledTable
                caption="Rework by defect"
                rows={summary.reworkByDefect}
                rowKey={({ kind }) => kind}
                columns={[
                  { label: 'Because of', names: true, cell: ({ kind }) => kind },
                  { label: priced('Amount'), set: 'number', cell: ({ amount }) => formatNumber(amount) },
                  { label: 'Share', set: 'number', cell: ({ share }) => formatQuantity(share * 100, '%', 3) },
                ]}
              />
            )}
          </div>
        </>
      )}
    </Section>
  )
}
