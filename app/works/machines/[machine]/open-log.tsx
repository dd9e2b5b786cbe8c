import { randomUUID } from 'node:crypto'
import { openLog } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, NumberBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { MachineView } from '@/lib/queries/works/machine'
import type { Instrument } from '@/shared/records/instrument'
import { CHARACTERISTICS } from '@/shared/records/characteristics'

interface OpenLogFormProps {
  view: MachineView
  instruments: readonly Pick<Instrument, 'id' | 'tag' | 'measures'>[]
}

/** Opens a log of one characteristic on the machine. */
export function OpenLogForm({ view: { machine, line }, instruments }: OpenLogFormProps) {
  return (
    <Section heading="Open a log">
      <CommandForm
        action={openLog}
        formKey={randomUUID()}
        hidden={{ machine: machine.code }}
        label="Open a log"
        className="form-narrow"
      >
        <TextBox name="code" label="Code" hint="Such as FLUX-1; of one log only." maxLength={40} required />
        <ChoiceBox
          name="characteristic"
          label="What is logged"
          choices={[
            { value: '', text: 'Choose …' },
            ...Object.entries(CHARACTERISTICS).map(([value, { label }]) => ({ value, text: label })),
          ]}
        />
        <ChoiceBox
          name="instrument"
          label="Instrument"
          optional
          choices={[
            { value: '', text: 'none named' },
            ...instruments.map(({ id, tag, measures }) => ({ value: id, text: `${tag}: ${measures}` })),
          ]}
        />
        <NumberBox
          name="everyH"
          label="Read at least every, h"
          hint="While the line works; a reading that is not taken in time is shown as overdue."
          optional
        />
        <ChoiceBox
          name="onlyFor"
          label="Of one programme’s boards alone"
          hint="For a profile, which is taken of one board."
          optional
          choices={[
            { value: '', text: 'of all made here' },
            ...line.stated.map(({ state: { programme } }) => ({
              value: programme.code,
              text: `${programme.code}, ${programme.title}`,
            })),
          ]}
        />
        <SubmitButton>Open the log</SubmitButton>
      </CommandForm>
    </Section>
  )
}
