import { ageingAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { NumberField } from '@/app/ui/field'
import { works } from '@/lib/settings/works'
import { formatNumber } from '@/shared/quantity/format'

interface AgeingFormProps {
  code: string
  given: Readonly<Record<string, string | undefined>>
  specified: { readonly temperatureC?: number | undefined; readonly months: number }
  problems: Readonly<Record<string, string>>
}

/** The store to compare with, and an ageing of one's own. */
export function AgeingForm({ code, given, specified, problems }: AgeingFormProps) {
  return (
    <form
      method="get"
      action={ageingAddress(code)}
      className="form-row"
      aria-label="The store to compare with"
    >
      <NumberField
        name="store"
        label="Store"
        unit="°C"
        defaultValue={given['store'] ?? asTyped(specified.temperatureC ?? 25)}
        error={problems['store']}
      />
      <NumberField
        name="humidity"
        label="Humidity of the store"
        unit="% RH"
        defaultValue={given['humidity'] ?? 60}
        error={problems['humidity']}
      />
      <NumberField
        name="months"
        label="Storage time to cover"
        unit="months"
        defaultValue={given['months'] ?? asTyped(specified.months || 12)}
        error={problems['months']}
      />
      <NumberField
        name="hours"
        label="Your own ageing"
        unit="h"
        defaultValue={given['hours'] ?? ''}
        error={problems['hours']}
      />
      <NumberField name="at" label="at" unit="°C" defaultValue={given['at'] ?? ''} error={problems['at']} />
      <NumberField
        name="rh"
        label="and, when damp"
        unit="% RH"
        defaultValue={given['rh'] ?? ''}
        error={problems['rh']}
      />
      <Button type="submit" kind="primary">
        Show what they stand for
      </Button>
    </form>
  )
}

const asTyped = (value: number): string => formatNumber(value).replace('.', works().notation.decimal)
