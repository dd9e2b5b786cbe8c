import { randomUUID } from 'node:crypto'
import { membersAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, PickBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { POLICY, refusal, whoMay } from '@/shared/policy'
import { handOverLead, inviteMember, removeMember } from './actions'

interface MembersPageProps {
  params: Promise<{ code: string }>
}

/** Who takes part in the programme, for which department, and who may do what. */
export default async function MembersPage({ params }: MembersPageProps) {
  const { code: asked } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const members = visit.view?.state.members ?? []
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={membersAddress(code)}
      place={[{ text: 'People' }]}
      title="People"
      supplement="Members by department; the lead invites them"
      cells={[{ label: 'Members', value: new Set(members.map(({ personId }) => personId)).size }]}
    >
      {(view) => (
        <>
          <Section heading="Members">
            <RuledTable
              caption="Members"
              captionHidden
              rows={members}
              rowKey={({ personId, department }) => `${personId} ${department}`}
              columns={[
                {
                  label: 'Name',
                  names: true,
                  cell: ({ personId, name }) =>
                    `${name}${personId === view.state.programme.leadId ? ', lead' : ''}`,
                },
                { label: 'Department', cell: ({ department }) => DEPARTMENT_NAMES[department] },
                ...(refusal('remove-member', view.actor)
                  ? []
                  : [
                      {
                        label: 'Change',
                        cell: (member: (typeof members)[number]) => (
                          <RemoveForm view={view} member={member} />
                        ),
                      },
                    ]),
              ]}
            />
          </Section>
          {!refusal('invite-member', view.actor) && <LeadForms view={view} />}
          <Section heading="Who may do what">
            <RuledTable
              caption="Rights"
              captionHidden
              rows={Object.values(POLICY).filter(({ scope }) => scope === 'programme')}
              rowKey={({ does }) => does}
              columns={[
                { label: 'Deed', names: true, cell: ({ does }) => does },
                { label: 'Who may', cell: (row) => whoMay(row) },
                {
                  label: 'Signature',
                  set: 'shrink',
                  cell: (row) => ('signature' in row ? 'asks for the password' : ''),
                },
              ]}
            />
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
}

function RemoveForm({
  view,
  member: { personId, name, department },
}: {
  view: ProgrammeView
  member: ProgrammeView['state']['members'][number]
}) {
  return (
    <Disclosure summary="Take out" printed={false}>
      <CommandForm
        action={removeMember}
        formKey={randomUUID()}
        hidden={{ programme: view.code, personId, department }}
        label={`Take ${name} out of ${DEPARTMENT_NAMES[department]}`}
      >
        <TextBox name="reason" label="Why" required />
        <SubmitButton kind="danger">Take out</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}

function LeadForms({ view }: { view: ProgrammeView }) {
  const others = [
    ...new Map(
      view.state.members
        .filter(({ personId }) => personId !== view.state.programme.leadId)
        .map((member) => [member.personId, member]),
    ).values(),
  ]
  return (
    <Section heading="Invite a person">
      <CommandForm
        action={inviteMember}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Invite a person"
        className="form-narrow"
      >
        <TextBox
          name="email"
          type="email"
          label="E-mail address"
          hint="An administrator adds people to the installation."
          required
        />
        <PickBox
          name="department"
          label="Department"
          choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
          required
        />
        <SubmitButton>Invite</SubmitButton>
      </CommandForm>
      {others.length > 0 && (
        <Disclosure summary="Hand the lead over" printed={false}>
          <CommandForm
            action={handOverLead}
            formKey={randomUUID()}
            hidden={{ programme: view.code }}
            label="Hand the lead over"
            className="form-narrow"
          >
            <ChoiceBox
              name="personId"
              label="New lead"
              choices={others.map(({ personId, name }) => ({ value: personId, text: name }))}
            />
            <SubmitButton kind="quiet">Hand over</SubmitButton>
          </CommandForm>
        </Disclosure>
      )}
    </Section>
  )
}
