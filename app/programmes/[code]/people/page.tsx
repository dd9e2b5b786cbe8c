import { membersAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { refusal } from '@/shared/policy'
import { LeadForms } from './lead-forms'
import { MemberTable } from './member-table'
import { RightsTable } from './rights-table'
import { TakeLeadForm } from './take-lead-form'

export const generateMetadata = programmeTitle(({ code }) => `People, ${code}`)

/** Who takes part in the programme, for which department, and who may do what. */
export default programmePage(async ({ visit, code }) => {
  const { members, programme } = visit.view.state
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={membersAddress(code)}
      place={[{ text: 'People' }]}
      title="People"
      supplement="Members by department; the lead invites them"
      cells={[
        { label: 'Members', value: new Set(members.map(({ personId }) => personId)).size },
        { label: 'Lead', value: members.find(({ personId }) => personId === programme.leadId)?.name ?? '' },
      ]}
    >
      {(view) => (
        <>
          <Section heading="Members">
            <MemberTable view={view} />
          </Section>
          {!refusal('invite-member', view.actor) && <LeadForms view={view} />}
          <TakeLeadForm view={view} />
          <Section
            heading="Who may do what"
            lead="Beside this table, nobody approves alone what they wrote themselves, and a gate’s quality signatory asked for no concession in its stage."
          >
            <Disclosure summary="Full permissions table">
              <RightsTable />
            </Disclosure>
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
})
