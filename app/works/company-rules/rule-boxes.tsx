import { LinesBox, NumberBox, TextBox, TickBox } from '@/app/forms/fields'
import type { CompanyRule } from '@/shared/company-rules/company-rule'

interface RuleBoxesProps {
  /** The rule whose document the boxes start with. */
  rule?: CompanyRule
  valueLabel: string
  valueHint?: string
  unit?: string
}

/** What a company rule says of its limit, and where. */
export const RuleBoxes = ({ rule, valueLabel, valueHint, unit }: RuleBoxesProps) => (
  <>
    <NumberBox
      name="value"
      label={valueLabel}
      hint={valueHint}
      {...(unit !== undefined && { unit })}
      required
    />
    <TextBox name="document" label="Document" defaultValue={rule?.document} maxLength={120} required />
    <TextBox
      name="edition"
      label="Edition"
      hint="Or the date of issue."
      defaultValue={rule?.edition}
      maxLength={30}
      optional
    />
    <TextBox name="clause" label="Clause" defaultValue={rule?.clause} maxLength={80} optional />
    <TickBox
      name="relaxes"
      label="The company expressly permits this although common practice is stricter"
      hint="Only then is a looser value let in; it is shown as looser wherever it rules."
    />
    <LinesBox
      name="reason"
      label="Why"
      hint="Every programme that takes it over says so."
      rows={2}
      required
    />
  </>
)
