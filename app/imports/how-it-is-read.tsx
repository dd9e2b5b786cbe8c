import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { DATE_CHOICES, DECIMAL_CHOICES, DELIMITER_CHOICES, FORM_BOXES } from '@/app/imports/chosen-form'
import { Section } from '@/app/ui/section'
import type { FileForm } from '@/lib/readings/file-form'

/** The separator, decimal sign, dates and clock that a file was read with, to be chosen otherwise. */
export const HowItIsRead = ({ form }: { form: FileForm }) => (
  <Section
    heading="How it is read"
    lead="As the file shows, else as the works writes. Choose otherwise where it is meant otherwise, and read it again."
  >
    <div className="form-row">
      <ChoiceBox
        name={FORM_BOXES.delimiter}
        label="Columns are parted by"
        defaultValue={form.delimiter}
        choices={DELIMITER_CHOICES}
      />
      <ChoiceBox
        name={FORM_BOXES.decimal}
        label="Decimal sign"
        defaultValue={form.decimal}
        choices={DECIMAL_CHOICES}
      />
      <ChoiceBox
        name={FORM_BOXES.dates}
        label="Dates are written"
        defaultValue={form.dates}
        choices={DATE_CHOICES}
      />
      <TextBox
        name={FORM_BOXES.timeZone}
        label="Times without a zone are by the clock of"
        defaultValue={form.timeZone}
        hint="The name of a time zone, such as Europe/Ljubljana or UTC."
      />
    </div>
  </Section>
)
