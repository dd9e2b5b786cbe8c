import { randomUUID } from 'node:crypto'
import { stateCompanyRule } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox } from '@/app/forms/fields'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { ALL_LIMITS } from '@/shared/catalogue/standard-plan'
import { formatQuantity } from '@/shared/quantity/format'
import { RuleBoxes } from './rule-boxes'

/** A limit that the company asks of every programme. */
export const StateRuleForm = () => (
  <CommandForm
    action={stateCompanyRule}
    formKey={randomUUID()}
    label="State a company rule"
    className="form-narrow"
  >
    <ChoiceBox
      name="limit"
      label="Limit"
      hint="With the value that every programme starts with."
      choices={[
        { value: '', text: 'Choose' },
        ...ALL_LIMITS.map(({ key, label, direction, unit, byDefault }) => ({
          value: key,
          text: `${label}: ${direction} ${formatQuantity(byDefault.value, unit)}`,
        })),
      ]}
      required
    />
    <RuleBoxes valueLabel="Value" valueHint="In the unit of the limit." />
    <PreviewedSubmit>State the rule</PreviewedSubmit>
  </CommandForm>
)
