import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, SignatureBox } from '@/app/forms/fields'
import { StampRow } from '@/app/frame/stamp-row'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { CONCESSION_STANDINGS, isAlive, isPermit, type ConcessionStatus } from '@/shared/gate/concession'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { grantConcession, refuseConcession } from '@/app/forms/command-actions'

interface SignaturesProps {
  view: ProgrammeView
  concession: ConcessionEntry
  status: ConcessionStatus
  hasPassword: boolean
}

/** The two signatures of a concession, and the forms to give one or to refuse it. */
export function Signatures({ view, concession, status, hasPassword }: SignaturesProps) {
  const kind = isPermit(concession) ? 'Deviation permit' : 'Concession'
  return (
    <Section
      heading="Signatures"
      lead="Design and quality sign; neither signature comes from one person for both, and quality’s not from who asked."
    >
      <StampRow
        meaning={`${kind} granted`}
        wanted="not signed yet"
        lapse={{ state: 'void' }}
        signed={(['design', 'quality'] as const).map((department) => ({
          department,
          signature: signatureOf(concession, department),
          holds: isAlive(status),
        }))}
      />
      {CONCESSION_STANDINGS[status].waits && (
        <Granting view={view} concession={concession} hasPassword={hasPassword} />
      )}
      {!concession.refused && !refusal('refuse-concession', view.actor) && (
        <Refusing code={view.code} concession={concession} granted={CONCESSION_STANDINGS[status].lets} />
      )}
    </Section>
  )
}

function signatureOf(concession: ConcessionEntry, department: 'design' | 'quality') {
  const signed = concession[department]
  return (
    signed && {
      personId: signed.byId,
      personName: signed.byName,
      at: signed.at,
      digest: concession.findingDigest,
    }
  )
}

const meaningOf = (concession: ConcessionEntry, department: Department): string =>
  isPermit(concession)
    ? `You permit this departure beforehand for ${DEPARTMENT_NAMES[department]}, within the bounds above.`
    : `You let this finding pass for ${DEPARTMENT_NAMES[department]}, within the bounds above.`

function Granting({ view, concession, hasPassword }: Omit<SignaturesProps, 'status'>) {
  const asked = view.actor.departments
    .filter((department) => department !== 'production')
    .map((department) => ({
      department,
      refused: refusal('grant-concession', view.actor, { department, concession }),
    }))
  return asked.map(({ department, refused }) =>
    refused ? (
      <p key={department} className="field-hint">
        {DEPARTMENT_NAMES[department]}: {refused}
      </p>
    ) : (
      <CommandForm
        key={department}
        action={grantConcession}
        formKey={randomUUID()}
        hidden={{ programme: view.code, concession: concession.number, department }}
        label={`Grant for ${DEPARTMENT_NAMES[department]}`}
        className="form-narrow"
      >
        <SignatureBox meaning={meaningOf(concession, department)} hasPassword={hasPassword} />
        <SubmitButton>Grant for {DEPARTMENT_NAMES[department]}</SubmitButton>
      </CommandForm>
    ),
  )
}

function Refusing({
  code,
  concession,
  granted,
}: {
  code: string
  concession: ConcessionEntry
  granted: boolean
}) {
  const kind = isPermit(concession) ? 'permit' : 'concession'
  return (
    <CommandForm
      action={refuseConcession}
      formKey={randomUUID()}
      hidden={{ programme: code, concession: concession.number }}
      label={`Refuse the ${kind}`}
    >
      <AnsweredDisclosure summary={granted ? `Take the ${kind} back` : 'Refuse it'}>
        <div className="form-narrow">
          <LinesBox name="reason" label="Why not" rows={2} required />
          <SubmitButton kind="danger">{granted ? `Take the ${kind} back` : 'Refuse'}</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
