import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { openLog } from '@/app/forms/command-actions'

/** Opens a log of one characteristic on one machine. */
export function OpenLogForm({ view }: { view: ProgrammeView }) {
  if (refusal('open-log', view.actor)) return null
  const { instruments } = view.state.facts.records
  return (
    <Section heading="Open a log">
      <CommandForm
        action={openLog}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Open a log"
        className="form-narrow"
      >
        <TextBox name="code" label="Code" hint="Such as FLUX-1." required />
        <ChoiceBox
          name="characteristic"
          label="What is logged"
          choices={[
            { value: '', text: 'Choose …' },
            ...Object.entries(CHARACTERISTICS).map(([value, { label }]) => ({ value, text: label })),
          ]}
        />
        <TextBox name="line" label="Line" required />
        <TextBox name="machine" label="Machine" required />
        <ChoiceBox
          name="instrument"
          label="Instrument"
          optional
          choices={[
            { value: '', text: 'none named' },
            ...instruments.map(({ id, tag, measures }) => ({ value: id, text: `${tag}: ${measures}` })),
          ]}
        />
        <SubmitButton>Open the log</SubmitButton>
      </CommandForm>
    </Section>
  )
}
