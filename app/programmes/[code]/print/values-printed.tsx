import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { CurrentRevision } from '@/shared/gate/programme-state'
import type { Parameter } from '@/shared/plan/parameter'

interface Specified {
  readonly parameter: Parameter
  readonly revision: CurrentRevision
}

/** What an item specifies: single values in one table, tables below, and the names of what is still empty. */
export function ValuesPrinted({
  view,
  parameters,
}: {
  view: ProgrammeView
  parameters: readonly Parameter[]
}) {
  const specified = parameters.flatMap((parameter): Specified[] => {
    const revision = view.state.revisions.get(parameter.key)
    return revision ? [{ parameter, revision }] : []
  })
  const empty = parameters.filter(({ key }) => !view.state.revisions.has(key))
  const fields = specified.filter(({ parameter }) => parameter.shape.kind === 'field')
  return (
    <>
      {fields.length > 0 && <FieldTable fields={fields} />}
      {specified
        .filter(({ parameter }) => parameter.shape.kind !== 'field')
        .map(({ parameter, revision }) => (
          <div key={parameter.key}>
            <h4>{parameter.label}</h4>
            <p className="value-why">
              <Revision {...revision} />
            </p>
            <ParameterValue parameter={parameter} value={revision.value} />
          </div>
        ))}
      {empty.length > 0 && <p>Not specified: {empty.map(({ label }) => label).join('; ')}.</p>}
    </>
  )
}

const FieldTable = ({ fields }: { fields: readonly Specified[] }) => (
  <RuledTable
    caption="Specified values"
    captionHidden
    rows={fields}
    rowKey={({ parameter }) => parameter.key}
    columns={[
      { label: 'Value of', names: true, cell: ({ parameter }) => parameter.label },
      {
        label: 'Specified',
        cell: ({ parameter, revision }) => <ParameterValue parameter={parameter} value={revision.value} />,
      },
      { label: 'By whom and why', cell: ({ revision }) => <Revision {...revision} /> },
    ]}
  />
)

const Revision = ({ number, authorName, at, reason }: CurrentRevision) => (
  <>
    revision {number}, {authorName}, <Day at={at} />: {reason}
  </>
)
