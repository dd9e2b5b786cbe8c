import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { stateCompanyRule, withdrawCompanyRule } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { companyRuleName, type CompanyRule } from '@/shared/company-rules/company-rule'
import { printedUnit } from '@/shared/quantity/unit'
import { RuleBoxes } from './rule-boxes'
import { limitLabel, RuleValue } from './rule-value'

/** The rules that stand, each with the forms to put another in its place or to withdraw it. */
export function RulesInForce({ rules, mayState }: { rules: readonly CompanyRule[]; mayState: boolean }) {
  if (rules.length === 0)
    return <Empty title="No company rule yet">Programmes start with the limits of the plan.</Empty>
  return (
    <RuledTable
      caption="Company rules in force"
      captionHidden
      narrow="cards-early"
      rows={rules}
      rowKey={({ id }) => id}
      columns={[
        { label: 'Limit', names: true, cell: ({ limit }) => limitLabel(limit) },
        { label: 'Value', cell: (rule) => <RuleValue rule={rule} /> },
        { label: 'Document', cell: companyRuleName },
        {
          label: 'Stated',
          cell: ({ stated, reason }) => (
            <>
              {stated.by}, <Day at={stated.at} />: {reason}
            </>
          ),
        },
        ...(mayState
          ? [
              {
                label: 'Change',
                cell: (rule: CompanyRule) => (
                  <>
                    <ReplaceForm rule={rule} />
                    <WithdrawForm rule={rule} />
                  </>
                ),
              },
            ]
          : []),
      ]}
    />
  )
}

function ReplaceForm({ rule }: { rule: CompanyRule }) {
  const limit = findLimit(rule.limit)
  if (!limit) return null
  return (
    <CommandForm
      action={stateCompanyRule}
      formKey={randomUUID()}
      hidden={{ limit: rule.limit, replaces: rule.id }}
      label={`State another rule in place of ${companyRuleName(rule)}, ${limit.label}`}
    >
      <AnsweredDisclosure summary="State another in its place">
        <div className="form-narrow">
          <RuleBoxes rule={rule} valueLabel={`Value, ${limit.direction}`} unit={printedUnit(limit.unit)} />
          <PreviewedSubmit>State it</PreviewedSubmit>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}

const WithdrawForm = ({ rule }: { rule: CompanyRule }) => (
  <CommandForm
    action={withdrawCompanyRule}
    formKey={randomUUID()}
    hidden={{ rule: rule.id }}
    label={`Withdraw ${companyRuleName(rule)}, ${limitLabel(rule.limit)}`}
  >
    <AnsweredDisclosure summary="Withdraw">
      <div className="form-narrow">
        <LinesBox name="reason" label="Why it does not stand any more" rows={2} required />
        <PreviewedSubmit kind="danger">Withdraw the rule</PreviewedSubmit>
      </div>
    </AnsweredDisclosure>
  </CommandForm>
)
