import { tableAddress } from '@/app/addresses'
import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { DepartmentTag } from '@/app/ui/department-tag'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Member } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { removeMember } from '@/app/forms/command-actions'

/** Who takes part, department by department. */
export function MemberTable({ view }: { view: ProgrammeView }) {
  const { members, programme } = view.state
  const columns: Column<Member>[] = [
    { label: 'Name', names: true, cell: ({ name }) => name },
    { label: 'Department', cell: ({ department }) => <DepartmentTag department={department} /> },
    {
      label: 'Part',
      cell: ({ personId }) =>
        personId === programme.leadId ? <strong>leads the programme</strong> : 'member',
    },
  ]
  const change: Column<Member> = {
    label: 'Change',
    cell: (member) => <RemoveForm code={view.code} member={member} />,
  }
  return (
    <RuledTable
      caption="Members"
      take={tableAddress(view.code, 'members')}
      captionHidden
      rows={DEPARTMENTS.flatMap((department) => members.filter((member) => member.department === department))}
      rowKey={({ personId, department }) => `${personId} ${department}`}
      columns={refusal('remove-member', view.actor) ? columns : [...columns, change]}
    />
  )
}

function RemoveForm({ code, member: { personId, name, department } }: { code: string; member: Member }) {
  return (
    <CommandForm
      action={removeMember}
      formKey={randomUUID()}
      hidden={{ programme: code, personId, department }}
      label={`Take ${name} out of ${DEPARTMENT_NAMES[department]}`}
    >
      <AnsweredDisclosure summary="Take out">
        <div className="form-narrow">
          <TextBox
            name="reason"
            label={`Why ${name} leaves ${DEPARTMENT_NAMES[department]}`}
            hint="What they signed stays signed."
            required
          />
          <SubmitButton kind="danger">Take out</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
