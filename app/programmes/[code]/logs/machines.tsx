import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { MachineTokenRow } from '@/lib/queries/machine-tokens'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { revokeMachineToken } from '@/app/forms/command-actions'
import { createToken } from './machine-actions'

/** The machines that push readings themselves, each with a token that can be stopped. */
export function Machines({ view, tokens }: { view: ProgrammeView; tokens: readonly MachineTokenRow[] }) {
  const may = !refusal('create-machine-token', view.actor)
  if (tokens.length === 0 && !may) return null
  const nameOf = (personId: string) =>
    view.state.members.find((member) => member.personId === personId)?.name ?? 'no longer a member'
  return (
    <Section
      id="machines"
      heading="Machines that push readings"
      lead={
        <>
          A machine sends its readings to <code>/api/readings</code>; what it may send is described at{' '}
          <a href="/api/openapi">/api/openapi</a>. It acts as the person who let it in, and no longer than
          that person may.
        </>
      }
    >
      {tokens.length > 0 && (
        <RuledTable
          caption="Machines with a token"
          captionHidden
          rows={tokens}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Machine', names: true, cell: ({ name }) => name },
            {
              label: 'Let in',
              cell: ({ createdAt, createdById }) => (
                <>
                  <Day at={createdAt} />, {nameOf(createdById)}
                </>
              ),
            },
            {
              label: 'Now',
              cell: ({ id, name, revokedAt }) =>
                revokedAt ? (
                  <>
                    stopped <Day at={revokedAt} />
                  </>
                ) : may ? (
                  <CommandForm
                    action={revokeMachineToken}
                    formKey={randomUUID()}
                    hidden={{ programme: view.code, token: id }}
                    label={`Stop ${name}`}
                  >
                    <SubmitButton kind="danger">Stop it</SubmitButton>
                  </CommandForm>
                ) : (
                  'may push'
                ),
            },
          ]}
        />
      )}
      {may && (
        <CommandForm
          action={createToken}
          formKey={randomUUID()}
          hidden={{ programme: view.code }}
          label="Let a machine in"
          className="form-narrow"
        >
          <TextBox
            name="name"
            label="Machine"
            hint="Such as “density meter of wave 1”."
            maxLength={60}
            required
          />
          <SubmitButton>Make its token</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
