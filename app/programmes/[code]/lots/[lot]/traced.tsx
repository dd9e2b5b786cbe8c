import { randomUUID } from 'node:crypto'
import { assemblyAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Lot } from '@/shared/records/lot'
import { traceLot } from '@/app/forms/command-actions'

/** Which assemblies the lot went into. */
export function Traced({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  return (
    <Section
      heading="Used in"
      lead={lot.usedIn.length === 1 ? '1 assembly' : `${lot.usedIn.length} assemblies`}
    >
      {lot.usedIn.length > 0 && (
        <Disclosure summary="Which" printed={false}>
          <p>
            {lot.usedIn.map((serial, at) => (
              <span key={serial}>
                {at > 0 && ', '}
                <a href={assemblyAddress(view.code, serial)}>{serial}</a>
              </span>
            ))}
          </p>
        </Disclosure>
      )}
      {!refusal('trace-lot', view.actor) && (
        <CommandForm
          action={traceLot}
          formKey={randomUUID()}
          hidden={{ programme: view.code, lot: lot.code }}
          label="Record assemblies"
          className="form-narrow"
        >
          <LinesBox
            name="assemblies"
            label="Serial numbers"
            hint="Separated by spaces, commas or lines."
            rows={3}
            required
          />
          <SubmitButton kind="quiet">Record assemblies</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
