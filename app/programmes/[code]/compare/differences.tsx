import { findingAddress, itemAddress, limitAddress, parameterAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { LimitSaid, ProgrammeDifference } from '@/shared/gate/programme-difference'
import type { Parameter } from '@/shared/plan/parameter'
import type { Limit } from '@/shared/plan/requirement'
import { valueDifference } from '@/shared/plan/value-difference'
import { formatQuantity } from '@/shared/quantity/format'
import type { Verdict } from '@/shared/rules/finding'

interface DifferencesProps {
  one: ProgrammeView
  other: ProgrammeView
  difference: ProgrammeDifference
}

/** What differs, a table a subject; a subject in which nothing differs is said in a line. */
export function Differences({ one, other, difference }: DifferencesProps) {
  const { values, limits, verdicts, items } = difference
  if (values.length + limits.length + verdicts.length + items.length === 0)
    return <Notice kind="success" title="Nothing differs" />
  return (
    <>
      <Section heading="Values">
        <RuledTable
          caption="Values that differ"
          captionHidden
          narrow="cards-early"
          rows={values}
          rowKey={({ parameter }) => parameter.key}
          columns={[
            {
              label: 'Value',
              names: true,
              cell: ({ parameter: { key, label } }) => <a href={parameterAddress(one.code, key)}>{label}</a>,
            },
            { label: one.code, cell: (row) => <Value parameter={row.parameter} value={row.one} /> },
            {
              label: other.code,
              cell: (row) => <Value parameter={row.parameter} value={row.other} beside={row.one} />,
            },
          ]}
        />
      </Section>
      <Section heading="Limits">
        <RuledTable
          caption="Limits that differ"
          captionHidden
          rows={limits}
          rowKey={({ limit }) => limit.key}
          columns={[
            {
              label: 'Limit',
              names: true,
              cell: ({ limit: { key, label } }) => <a href={limitAddress(one.code, key)}>{label}</a>,
            },
            { label: one.code, cell: (row) => limitText(row.limit, row.one) },
            { label: other.code, cell: (row) => limitText(row.limit, row.other) },
          ]}
        />
      </Section>
      <Section heading="Verdicts">
        <RuledTable
          caption="Verdicts that differ"
          captionHidden
          rows={verdicts}
          rowKey={({ rule }) => rule.id}
          columns={[
            { label: 'Finding', names: true, cell: ({ rule }) => rule.title },
            {
              label: one.code,
              cell: (row) => <VerdictIn view={one} rule={row.rule.id} verdict={row.one} />,
            },
            {
              label: other.code,
              cell: (row) => <VerdictIn view={other} rule={row.rule.id} verdict={row.other} />,
            },
          ]}
        />
      </Section>
      {items.length > 0 && (
        <Section heading="Items of one only">
          <RuledTable
            caption="Items that only one of them asks"
            captionHidden
            rows={items}
            rowKey={({ key }) => key}
            columns={[
              {
                label: 'Item',
                names: true,
                cell: (item) => (
                  <a href={itemAddress(item.in === 'one' ? one.code : other.code, item.key)}>{item.title}</a>
                ),
              },
              { label: 'Asked in', cell: (item) => (item.in === 'one' ? one.code : other.code) },
            ]}
          />
        </Section>
      )}
    </>
  )
}

/** A value; of a table beside another only what differs from it. */
function Value({ parameter, value, beside }: { parameter: Parameter; value: unknown; beside?: unknown }) {
  if (value === undefined) return <>not given</>
  if (parameter.shape.kind === 'field') return <ParameterValue parameter={parameter} value={value} />
  const rows = Array.isArray(value) ? value.length : 0
  if (beside === undefined) return <>{rows === 1 ? 'one row' : `${rows} rows`}</>
  return (
    <ul className="option-differences">
      {valueDifference(parameter, beside, value).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

const limitText = ({ direction, unit }: Limit, { value, document }: LimitSaid): string =>
  `${direction} ${formatQuantity(value, unit, 6)}, by ${document}`

function VerdictIn({
  view,
  rule,
  verdict,
}: {
  view: ProgrammeView
  rule: string
  verdict: Verdict | undefined
}) {
  return verdict ? (
    <a href={findingAddress(view.code, rule)}>
      <VerdictMark verdict={verdict} />
    </a>
  ) : (
    <>not asked</>
  )
}
