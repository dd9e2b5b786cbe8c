import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { valueInBrief } from '@/shared/commands/named'
import { findParameter } from '@/shared/catalogue/standard-plan'
import {
  companyRuleName,
  type CompanyPreference,
  type CompanyRule,
} from '@/shared/company-rules/company-rule'
import { limitLabel, RuleValue } from './rule-value'

interface PastRulesProps {
  rules: readonly CompanyRule[]
  preferences: readonly CompanyPreference[]
}

/** What does not stand any more, by whom and why, newest first. */
export function PastRules({ rules, preferences }: PastRulesProps) {
  const past = [
    ...rules.map((rule) => ({
      ...rule,
      what: limitLabel(rule.limit),
      value: <RuleValue rule={rule} />,
      from: companyRuleName(rule),
    })),
    ...preferences.map((preference) => ({
      ...preference,
      what: findParameter(preference.parameter)?.label ?? preference.parameter,
      value: valueInBrief(preference.parameter, preference.value),
      from: 'preferred value',
    })),
  ]
    .flatMap(({ withdrawn, ...one }) => (withdrawn ? [{ ...one, withdrawn }] : []))
    .sort((a, b) => (a.withdrawn.at < b.withdrawn.at ? 1 : -1))
  if (past.length === 0) return null
  return (
    <Section heading="What stood before">
      <RuledTable
        caption="Rules and preferred values that do not stand any more"
        captionHidden
        narrow="cards-early"
        rows={past}
        rowKey={({ id }) => id}
        columns={[
          { label: 'What', names: true, cell: ({ what }) => what },
          { label: 'Value', cell: ({ value }) => value },
          { label: 'From', cell: ({ from }) => from },
          {
            label: 'Stated',
            cell: ({ stated, reason }) => (
              <>
                {stated.by}, <Day at={stated.at} />: {reason}
              </>
            ),
          },
          {
            label: 'Withdrawn or replaced',
            cell: ({ withdrawn: { by, at, why } }) => (
              <>
                {by}, <Day at={at} />: {why}
              </>
            ),
          },
        ]}
      />
    </Section>
  )
}
