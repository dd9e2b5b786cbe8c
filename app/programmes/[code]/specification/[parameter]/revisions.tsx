import { BroughtBy } from '@/app/findings/brought-by'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import type { Revision } from '@/lib/queries/revisions'
import type { OptionStudy } from '@/shared/gate/option-study'
import type { Parameter } from '@/shared/plan/parameter'
import { valueDifference } from '@/shared/plan/value-difference'
import { studyBringing } from '@/shared/why/brought-by'

/** Every value the parameter ever had, newest first, with what each changed against the one before. */
export function Revisions({
  code,
  parameter,
  revisions,
  studies,
}: {
  code: string
  parameter: Parameter
  revisions: readonly Revision[]
  studies: readonly OptionStudy[]
}) {
  if (revisions.length === 0)
    return <Empty title="Not specified yet">Its first value will be revision 1.</Empty>
  const rows = revisions.map((revision, position) => ({ ...revision, before: revisions[position + 1] }))
  return (
    <RuledTable
      caption="Revisions"
      captionHidden
      narrow="cards-early"
      rows={rows}
      rowKey={({ number }) => number}
      columns={[
        { label: 'No.', set: 'shrink', names: true, cell: ({ number }) => number },
        {
          label: parameter.shape.kind === 'table' ? 'What changed' : 'Value',
          cell: ({ value, before, number }) =>
            parameter.shape.kind === 'table' ? (
              <TableRevision
                parameter={parameter}
                value={value}
                before={before?.value}
                first={number === 1}
              />
            ) : (
              <ParameterValue parameter={parameter} value={value} />
            ),
        },
        {
          label: 'By',
          cell: ({ author, at, notice }) => (
            <>
              {author}, <Day at={at} />
              <BroughtBy
                code={code}
                notice={notice}
                study={studyBringing(studies, at, { parameter: parameter.key })?.number}
              />
            </>
          ),
        },
        { label: 'Why', cell: ({ reason }) => reason },
      ]}
    />
  )
}

function TableRevision({
  parameter,
  value,
  before,
  first,
}: {
  parameter: Parameter
  value: unknown
  before: unknown
  first: boolean
}) {
  const rows = Array.isArray(value) ? value.length : 0
  const differences = before === undefined ? [] : valueDifference(parameter, before, value)
  return (
    <>
      {first && <span className="block">First specified.</span>}
      {differences.map((line, position) => (
        <span key={position} className="block">
          {line}
        </span>
      ))}
      <Disclosure summary={`The whole table, ${rows} ${rows === 1 ? 'row' : 'rows'}`} printed={false}>
        <ParameterValue parameter={parameter} value={value} />
      </Disclosure>
    </>
  )
}
