import { gateAddress, itemAddress, signListAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { SignList } from '@/shared/gate/sign-list'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { SignForm } from './sign-form'

interface DepartmentListProps {
  view: ProgrammeView
  lists: readonly SignList[]
  list: SignList
  department: Department
  hasPassword: boolean
}

/** What one department has to approve in a stage: what can be signed, what cannot yet, what is signed. */
export function DepartmentList({ view, lists, list, department, hasPassword }: DepartmentListProps) {
  const stage = STAGE_NAMES[list.stage].toLowerCase()
  const elsewhere = lists.filter(({ stage: other, toSign }) => other !== list.stage && toSign.length > 0)
  return (
    <>
      <Section
        id={department}
        heading={`To sign for ${DEPARTMENT_NAMES[department]}: ${list.toSign.length} in the ${stage} stage`}
        lead="Read what each item covers, tick those you have read, and sign once."
        aside={<a href={gateAddress(view.code, list.stage)}>Gate of the stage</a>}
      >
        {list.toSign.length > 0 ? (
          <SignForm {...{ view, list, department, hasPassword }} />
        ) : (
          <Empty title="Nothing can be signed here now">
            {list.notNow.length > 0
              ? 'What keeps each item from being approved is said below.'
              : 'Every item that asks for this department is approved as it stands.'}
          </Empty>
        )}
        {elsewhere.map(({ stage: other, toSign }) => (
          <p key={other}>
            <a href={signListAddress(view.code, other)}>
              {toSign.length} more in the {STAGE_NAMES[other].toLowerCase()} stage
            </a>
          </p>
        ))}
      </Section>
      {list.notNow.length > 0 && (
        <Section heading={`Not now: ${list.notNow.length}`} level={3}>
          <ul className="sign-not-now">
            {list.notNow.map(({ item: { item }, why }) => (
              <li key={item.definition.key}>
                <a href={itemAddress(view.code, item.definition.key)}>{item.definition.title}</a>: {why}
              </li>
            ))}
          </ul>
        </Section>
      )}
      {list.signed.length > 0 && (
        <Section heading={`Signed: ${list.signed.length}`} level={3}>
          <RuledTable
            caption={`Signed for ${DEPARTMENT_NAMES[department]}`}
            captionHidden
            rows={list.signed}
            rowKey={({ approval }) => approval.id}
            columns={[
              {
                label: 'Item',
                names: true,
                cell: ({ item: { item } }) => (
                  <a href={itemAddress(view.code, item.definition.key)}>{item.definition.title}</a>
                ),
              },
              { label: 'By', cell: ({ approval }) => approval.personName },
              { label: 'On', set: 'shrink', cell: ({ approval }) => <Day at={approval.at} /> },
              {
                label: 'Digest',
                set: 'shrink',
                cell: ({ approval }) => <Digest value={approval.digest} length={12} />,
              },
            ]}
          />
        </Section>
      )}
    </>
  )
}
