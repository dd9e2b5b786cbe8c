import { randomUUID } from 'node:crypto'
import { requestConcession } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { concessionFor, concessionStatus, isAlive, isPermit } from '@/shared/gate/concession'
import { refusal } from '@/shared/policy'
import { canBeConceded, type Finding } from '@/shared/rules/finding'
import type { AnyRule } from '@/shared/rules/rule'
import { ConcessionTable } from '../../concessions/concession-table'
import { DeviationForms } from './deviation-forms'
import { PermissionBounds } from './permission-bounds'

interface ConcessionsProps {
  view: ProgrammeView
  item: string
  rule: AnyRule
  finding: Finding
}

/** Concessions and deviation permits on this finding, and the forms to ask for one. */
export function Concessions({ view, item, rule, finding }: ConcessionsProps) {
  const own = view.state.concessions.filter((entry) => entry.rule === finding.rule)
  const asked = own.some(
    (entry) => !isPermit(entry) && isAlive(concessionStatus(entry, finding, view.state.facts)),
  )
  const mayAsk =
    canBeConceded(finding) &&
    !asked &&
    !concessionFor(finding, item, view.state) &&
    !refusal('request-concession', view.actor)
  const mayDepart = !refusal('request-deviation', view.actor)
  if (own.length === 0 && !mayAsk && !mayDepart) return null
  return (
    <Section
      id="concessions"
      heading="Concessions and deviation permits"
      lead="Permission to pass with this finding as it is (concession), or to depart from what is asked before anything has (deviation permit): for so many boards or until a day, signed by design and by quality."
    >
      {own.length > 0 && <ConcessionTable view={view} concessions={own} />}
      {mayAsk && (
        <CommandForm
          action={requestConcession}
          formKey={randomUUID()}
          hidden={{ programme: view.code, item, rule: finding.rule }}
          label="Ask for a concession"
          className="form-narrow"
        >
          {finding.verdict === 'undetermined' && <WhatIsMissing finding={finding} />}
          <LinesBox name="why" label="Why it is tolerable" rows={3} required />
          <PermissionBounds />
          <SubmitButton kind="quiet">Ask for a concession</SubmitButton>
        </CommandForm>
      )}
      {mayDepart && <DeviationForms view={view} item={item} rule={rule} />}
    </Section>
  )
}

/** A concession over what was never shown is for just what is missing today. */
const WhatIsMissing = ({ finding: { missing = [] } }: { finding: Finding }) => (
  <div className="field-hint">
    <p>It holds only while just this is missing:</p>
    <ul>
      {missing.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  </div>
)
