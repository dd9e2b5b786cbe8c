import { logAddress } from '@/app/addresses'
import { Button, ButtonLink } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import { ChoiceField, TextField } from '@/app/ui/field'
import { CHART_OPTIONS, GROUPING_OPTIONS } from '@/shared/plan/parameters/control-charts'
import type { Charting, LogChart } from '@/shared/charts/log-chart'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import type { ChartAsked } from './chart-asked'

interface ChartFormProps {
  code: string
  log: string
  shown: LogChart
  asked: ChartAsked
  specified: Charting
  /** Whether what is shown is other than what is specified. */
  other: boolean
}

const choices = (options: readonly { value: string; label: string }[]) =>
  options.map(({ value, label }) => ({ value, text: label }))

/** Another chart of the same readings. It changes the address only: what must be answered, the specification says. */
export function ChartForm({ code, log, shown, asked, specified, other }: ChartFormProps) {
  const { choice, rules } = shown
  const address = logAddress(code, log)
  const handbook = specified.rules === 'limits' ? 'limits' : 'zones'
  return (
    <Disclosure summary="Another chart of these readings" printed={false} open={other}>
      <form action={`${address}#chart`} method="get" aria-label="Another chart">
        <div className="form-row">
          <ChoiceField
            name="chart"
            label="Chart"
            choices={choices(CHART_OPTIONS)}
            defaultValue={choice.chart}
          />
          <TextField
            name="size"
            label="Readings a subgroup"
            inputMode="numeric"
            hint="2 to 25, for charts of subgroups."
            defaultValue={choice.subgroup}
          />
          <ChoiceField
            name="grouping"
            label="Subgroups are"
            choices={choices(GROUPING_OPTIONS)}
            defaultValue={choice.grouping}
          />
          <ChoiceField
            name="rules"
            label="Run rules"
            choices={[
              { value: handbook, text: RUN_RULE_SETS.zones.name },
              { value: 'nelson', text: RUN_RULE_SETS.nelson.name },
            ]}
            defaultValue={rules === 'nelson' ? 'nelson' : handbook}
          />
          {specified.choice.baseline && (
            <ChoiceField
              name="limits"
              label="Limits"
              choices={[
                { value: 'held', text: 'held, as specified' },
                { value: 'estimated', text: 'estimated from all readings' },
              ]}
              defaultValue={choice.baseline ? 'held' : 'estimated'}
            />
          )}
          <TextField name="from" type="date" label="Show from" defaultValue={asked.from} optional />
          <TextField name="to" type="date" label="to" defaultValue={asked.to} optional />
        </div>
        <p className="form-actions">
          <Button type="submit">Redraw the chart</Button>
          {(other || asked.from || asked.to) && (
            <ButtonLink href={`${address}#chart`}>The chart as specified</ButtonLink>
          )}
        </p>
      </form>
    </Disclosure>
  )
}
