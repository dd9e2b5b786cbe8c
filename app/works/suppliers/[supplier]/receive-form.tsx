import { randomUUID } from 'node:crypto'
import { receiveLot } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { LOT_KINDS } from '@/shared/methods/lot-kind'

interface ReceiveFormProps {
  supplier: string
  /** Parts that came before, or that programmes ask for. */
  parts: readonly string[]
  /** 'YYYY-MM-DD' */
  today: string
}

/** Records a delivery of a supplier. */
export const ReceiveForm = ({ supplier, parts, today }: ReceiveFormProps) => (
  <Section id="receive" heading="Receive a lot">
    <CommandForm
      action={receiveLot}
      formKey={randomUUID()}
      hidden={{ supplier }}
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
          list="parts-known"
          hint="As it is named wherever it is asked for."
          required
        />
        <datalist id="parts-known">
          {parts.map((part) => (
            <option key={part} value={part} />
          ))}
        </datalist>
        <TextBox name="dateCode" label="Date code" optional />
        <NumberBox name="quantity" label="Quantity" unit="pieces" required />
        <TextBox name="receivedOn" type="date" label="Received on" defaultValue={today} required />
        <TextBox
          name="expiresOn"
          type="date"
          label="To be used by"
          hint="The last day, where one is stated."
          optional
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
