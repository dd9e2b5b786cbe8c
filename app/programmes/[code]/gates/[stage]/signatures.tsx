import { signListAddress, whyAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox } from '@/app/forms/fields'
import { StampRow } from '@/app/frame/stamp-row'
import { Digest } from '@/app/ui/digest'
import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { GateState } from '@/shared/gate/gate'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { signGate } from '@/app/forms/command-actions'

interface SignaturesProps {
  view: ProgrammeView
  gate: GateState
  hasPassword: boolean
  formKey: string
}

/** The three stamps, and the form of the one this person may add. */
export function Signatures({ view, gate, hasPassword, formKey }: SignaturesProps) {
  const last = gate.signatures.findLast(({ signature, holds }) => signature && holds)?.signature
  return (
    <Section
      heading="Signatures"
      aside={<a href={signListAddress(view.code, gate.stage)}>Approvals of the stage to sign</a>}
      lead="Design signs first, then production, then quality, whose signature opens the gate."
    >
      <StampRow
        meaning="Gate signed"
        wanted="not signed yet"
        reader={view.actor}
        lapse={{ state: 'lapsed', because: 'The stage has changed since.' }}
        signed={gate.signatures.map((entry) => ({
          ...entry,
          coveredAt: entry.signature
            ? whyAddress(view.code, { kind: 'gate', key: entry.signature.id })
            : undefined,
        }))}
      />
      {last && (
        <Facts
          facts={[
            { label: 'Trail covered by the newest signature', value: `${last.trailSeq} entries` },
            { label: 'Newest hash then', value: <Digest value={last.headHash} full /> },
            { label: 'Merkle root then', value: <Digest value={last.merkleRoot} full /> },
          ]}
        />
      )}
      {view.actor.departments.map((department) => (
        <SignForm key={department} {...{ view, gate, hasPassword, formKey, department }} />
      ))}
    </Section>
  )
}

function SignForm({
  view,
  gate,
  hasPassword,
  formKey,
  department,
}: SignaturesProps & { department: Department }) {
  const why = refusal('sign-gate', view.actor, {
    department,
    gate,
    items: view.judgement.items,
    concessions: view.state.concessions,
  })
  if (why) return <p className="field-hint">{why}</p>
  const meaning = `You sign the ${STAGE_NAMES[gate.stage].toLowerCase()} gate for ${DEPARTMENT_NAMES[department]}: every item of the stage as it stands today, digest ${gate.digest.slice(0, 12)}.`
  return (
    <CommandForm
      action={signGate}
      formKey={formKey}
      hidden={{ programme: view.code, stage: gate.stage, department, digest: gate.digest }}
      label={`Sign for ${DEPARTMENT_NAMES[department]}`}
      className="form-narrow"
    >
      <SignatureBox meaning={meaning} hasPassword={hasPassword} />
      <SubmitButton>Sign the gate for {DEPARTMENT_NAMES[department]}</SubmitButton>
    </CommandForm>
  )
}
