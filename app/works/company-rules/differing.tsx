import { specificationAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import type { DifferingProgramme } from '@/lib/queries/company-rules'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { companyRuleName } from '@/shared/company-rules/company-rule'
import { limitLabel } from './rule-value'

/** The programmes that do not follow the rules of today: what they have to decide, and what they keep of their own. */
export function Differing({ programmes }: { programmes: readonly DifferingProgramme[] }) {
  if (programmes.length === 0) return <p>None of those that you may read.</p>
  return (
    <RuledTable
      caption="Programmes that differ from the company rules"
      captionHidden
      rows={programmes}
      rowKey={({ code }) => code}
      columns={[
        {
          label: 'Programme',
          names: true,
          cell: ({ code, title }) => (
            <a href={`${specificationAddress(code)}#company-rules`}>
              {code}, {title}
            </a>
          ),
        },
        { label: 'To decide', cell: (programme) => <Listed {...programme} kept={false} /> },
        { label: 'Keeps its own', cell: (programme) => <Listed {...programme} kept /> },
      ]}
    />
  )
}

function Listed({
  differences,
  values,
  kept,
}: Pick<DifferingProgramme, 'differences' | 'values'> & { kept: boolean }) {
  const isMeant = (one: { readonly kept: object | null }) => (one.kept !== null) === kept
  const [rules, preferred] = [differences.filter(isMeant), values.filter(isMeant)]
  if (rules.length + preferred.length === 0) return <>–</>
  return (
    <>
      {rules.map((one) => (
        <span key={`${one.standing} ${one.rule.id}`} className="block">
          {limitLabel(one.rule.limit)}, {companyRuleName(one.rule)}
          {one.standing === 'withdrawn' && ' (withdrawn)'}
          {one.kept && `: ${one.kept.reason}`}
        </span>
      ))}
      {preferred.map(({ preference, kept: own }) => (
        <span key={preference.id} className="block">
          {findParameter(preference.parameter)?.label ?? preference.parameter}, preferred value
          {own && `: ${own.reason}`}
        </span>
      ))}
    </>
  )
}
