import { samplingAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { ChoiceField, NumberField } from '@/app/ui/field'
import {
  acceptableQualityLevel,
  inspectionLevel,
  samplingScheme,
} from '@/shared/plan/parameters/evaluation-sampling'
import { works } from '@/lib/settings/works'
import type { SamplingSettings } from '@/shared/sampling/sampling-plan'
import { SEVERITIES } from '@/shared/statistics/sampling/single-plan'
import { formatNumber } from '@/shared/quantity/format'

interface PlannerFormProps {
  code: string
  given: Readonly<Record<string, string | undefined>>
  specified: SamplingSettings
  problems: Readonly<Record<string, string>>
}

/** What a plan is asked for: everything stands in the address, so that a plan can be sent to somebody. */
export function PlannerForm({ code, given, specified, problems }: PlannerFormProps) {
  const { fraction, confidence } = specified.zeroAcceptance
  return (
    <form method="get" action={samplingAddress(code)} className="form-row" aria-label="Plan a sample">
      <NumberField
        name="lot"
        label="Lot"
        unit="pieces"
        defaultValue={given['lot'] ?? 150}
        error={problems['lot']}
      />
      <ChoiceField
        name="type"
        label="Kind of plan"
        defaultValue={given['type'] ?? specified.scheme}
        choices={choicesOf(samplingScheme)}
      />
      <ChoiceField
        name="level"
        label="Inspection level"
        defaultValue={given['level'] ?? specified.level}
        choices={choicesOf(inspectionLevel)}
      />
      <ChoiceField
        name="aql"
        label="Acceptable quality level"
        defaultValue={given['aql'] ?? specified.limit}
        choices={choicesOf(acceptableQualityLevel)}
      />
      <ChoiceField
        name="state"
        label="Inspection"
        defaultValue={given['state'] ?? 'normal'}
        choices={SEVERITIES.map((value) => ({ value, text: value }))}
      />
      <NumberField
        name="share"
        label="Zero acceptance: share to be found"
        unit="%"
        defaultValue={given['share'] ?? asTyped(fraction * 100)}
        error={problems['share']}
      />
      <NumberField
        name="confidence"
        label="Zero acceptance: confidence"
        unit="%"
        defaultValue={given['confidence'] ?? asTyped(confidence * 100)}
        error={problems['confidence']}
      />
      <Button type="submit" kind="primary">
        Show the plan
      </Button>
    </form>
  )
}

type Chosen = typeof samplingScheme | typeof inspectionLevel | typeof acceptableQualityLevel

function choicesOf({ shape }: Chosen) {
  if (shape.kind !== 'field' || shape.column.kind !== 'choice') return []
  return shape.column.options.map(({ value, label }) => ({ value, text: label }))
}

const asTyped = (value: number): string => formatNumber(value).replace('.', works().notation.decimal)
