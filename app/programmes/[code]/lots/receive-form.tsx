import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import type { ValueOf } from '@/shared/plan/parameter'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { receiveLot } from '@/app/forms/command-actions'

/** Records a delivery. */
export function ReceiveForm({ view }: { view: ProgrammeView }) {
  const needed = (view.state.facts.values.get(lotsNeeded.key) ?? []) as ValueOf<typeof lotsNeeded>
  const parts = [...new Set(needed.map(({ part }) => part))]
  return (
    <Section id="receive" heading="Receive a lot">
      <CommandForm
        action={receiveLot}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Receive a lot"
        className="form-stack"
      >
        <div className="form-row">
          <TextBox name="code" label="Lot code" required />
          <ChoiceBox
            name="kind"
            label="Kind"
            choices={[{ value: '', text: 'Choose …' }, ...LOT_KINDS.map((value) => ({ value, text: value }))]}
          />
          <TextBox
            name="part"
            label="What it is"
            list="parts-needed"
            hint={
              parts.length > 0
                ? `To be evaluated: ${parts.join('; ')}.`
                : 'As it is named wherever it is asked for.'
            }
            required
          />
          <datalist id="parts-needed">
            {parts.map((part) => (
              <option key={part} value={part} />
            ))}
          </datalist>
          <TextBox name="supplier" label="Supplier" required />
          <TextBox name="dateCode" label="Date code" optional />
          <NumberBox name="quantity" label="Quantity" unit="pieces" required />
          <TextBox
            name="receivedOn"
            type="date"
            label="Received on"
            defaultValue={view.state.facts.today}
            required
          />
          <NumberBox name="temperatureC" label="Store temperature" unit="°C" required />
          <NumberBox name="relativeHumidityPct" label="Store humidity" unit="% RH" required />
          <TextBox name="packing" label="Packing" required />
        </div>
        <LinesBox
          name="supplierResult"
          label="Supplier’s own result"
          hint="As stated; it is reaffirmed by a test here."
          rows={2}
          optional
        />
        <SubmitButton>Receive the lot</SubmitButton>
      </CommandForm>
    </Section>
  )
}
