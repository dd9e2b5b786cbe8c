import { Button } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import { ChoiceField, TextField } from '@/app/ui/field'
import { DEFECT_CHART_OPTIONS } from '@/shared/plan/parameters/defect-charts'
import type { DefectChartChoice } from '@/shared/charts/defect-chart'
import type { DefectChartAsked } from './chart-asked'

/** Another chart of the same inspections. It changes the address only: what must be answered, the specification says. */
export function DefectChartForm({ shown, asked }: { shown: DefectChartChoice; asked: DefectChartAsked }) {
  const other = Boolean(asked.chart || asked.from || asked.to)
  return (
    <Disclosure summary="Another chart of these inspections" printed={false} open={other}>
      <form method="get" aria-label="Which chart">
        <div className="form-row">
          <ChoiceField
            name="chart"
            label="Chart"
            choices={DEFECT_CHART_OPTIONS.map(({ value, label }) => ({ value, text: label }))}
            defaultValue={shown.chart}
          />
          <TextField
            name="from"
            type="date"
            label="Limits from samples of"
            defaultValue={asked.from || shown.baseline?.from}
            optional
          />
          <TextField
            name="to"
            type="date"
            label="to"
            defaultValue={asked.to || shown.baseline?.to}
            optional
          />
          <Button type="submit">Redraw the chart</Button>
        </div>
      </form>
    </Disclosure>
  )
}
