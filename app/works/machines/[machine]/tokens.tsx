import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { TokenOfMachine } from '@/lib/queries/works/machine'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { revokeMachineToken } from '@/app/forms/command-actions'
import { createToken } from './token-actions'

interface TokensProps {
  machine: string
  tokens: readonly TokenOfMachine[]
  actor: Actor
}

/** What pushes readings into the machine's logs by itself, each with a token that can be stopped. */
export function Tokens({ machine, tokens, actor }: TokensProps) {
  const may = !refusal('create-machine-token', actor)
  if (tokens.length === 0 && !may) return null
  return (
    <Section
      id="tokens"
      heading="Pushed by the machine itself"
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
          caption="Tokens"
          captionHidden
          rows={tokens}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Token', names: true, cell: ({ name }) => name },
            {
              label: 'Let in',
              cell: ({ createdAt, byName }) => (
                <>
                  <Day at={createdAt} />, {byName}
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
                    hidden={{ 'works.kind': 'machine', 'works.code': machine, token: id }}
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
          hidden={{ machine: machine }}
          label="Let a machine in"
          className="form-narrow"
        >
          <TextBox
            name="name"
            label="What pushes"
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
