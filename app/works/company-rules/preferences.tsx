import { randomUUID } from 'node:crypto'
import { companyRulesAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { preferValue, withdrawPreference } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { ValueBoxes } from '@/app/forms/value-boxes'
import { Button } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { ChoiceField } from '@/app/ui/field'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { ALL_PARAMETERS, findParameter } from '@/shared/catalogue/standard-plan'
import type { CompanyPreference } from '@/shared/company-rules/company-rule'
import { ASKED_AT_OPENING } from '@/shared/plan/parameters/programme'

interface PreferencesProps {
  preferences: readonly CompanyPreference[]
  /** The key of the parameter whose form is open. */
  prefer: string
  /** Why the person may not prefer values; undefined when they may. */
  refused: string | undefined
}

/** The values that programmes start with, and the forms to prefer another. */
export function Preferences({ preferences, prefer, refused }: PreferencesProps) {
  const inForce = preferences.filter(({ withdrawn }) => withdrawn === null)
  return (
    <Section
      id="preferences"
      heading="Preferred values"
      lead="What a new programme starts with, as its first revision. Programmes that specified another value are shown the difference, and take it over or keep their own."
    >
      {inForce.length > 0 ? (
        <RuledTable
          caption="Preferred values"
          captionHidden
          narrow="cards-early"
          rows={inForce}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Parameter', names: true, cell: ({ parameter }) => parameterLabel(parameter) },
            { label: 'Value', cell: (preference) => <Preferred preference={preference} /> },
            {
              label: 'Preferred',
              cell: ({ stated, reason }) => (
                <>
                  {stated.by}, <Day at={stated.at} />: {reason}
                </>
              ),
            },
            ...(refused === undefined
              ? [{ label: 'Change', cell: (preference: CompanyPreference) => <Change {...preference} /> }]
              : []),
          ]}
        />
      ) : (
        <p>None yet: a new programme starts with what is asked for when it is opened.</p>
      )}
      {refused ? <p className="field-hint">{refused}</p> : <Prefer prefer={prefer} now={inForce} />}
    </Section>
  )
}

const parameterLabel = (key: string): string => findParameter(key)?.label ?? key

function Preferred({ preference: { parameter: key, value } }: { preference: CompanyPreference }) {
  const parameter = findParameter(key)
  return parameter ? <ParameterValue parameter={parameter} value={value} /> : <>{JSON.stringify(value)}</>
}

const preferAddress = (parameter: string): string =>
  `${companyRulesAddress()}?${new URLSearchParams({ prefer: parameter })}#preferences`

const Change = ({ id, parameter }: CompanyPreference) => (
  <>
    <a className="print-hidden" href={preferAddress(parameter)}>
      Prefer another value<span className="sr-only"> of {parameterLabel(parameter)}</span>
    </a>
    <CommandForm
      action={withdrawPreference}
      formKey={randomUUID()}
      hidden={{ preference: id }}
      label={`Withdraw the preferred ${parameterLabel(parameter)}`}
    >
      <AnsweredDisclosure summary="Withdraw">
        <div className="form-narrow">
          <LinesBox name="reason" label="Why it is not preferred any more" rows={2} required />
          <SubmitButton kind="danger">Withdraw the preference</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  </>
)

const CHOICES = ALL_PARAMETERS.filter(
  (parameter) => !ASKED_AT_OPENING.some(({ key }) => key === parameter.key),
)

/** First which parameter, then its value in the boxes that it declares. */
function Prefer({ prefer, now }: { prefer: string; now: readonly CompanyPreference[] }) {
  const parameter = CHOICES.find(({ key }) => key === prefer)
  return (
    <>
      <form
        method="get"
        action={`${companyRulesAddress()}#preferences`}
        className="form-row print-hidden"
        aria-label="Choose a parameter"
      >
        <ChoiceField
          name="prefer"
          label="Parameter"
          defaultValue={prefer}
          choices={[
            { value: '', text: 'Choose' },
            ...CHOICES.map(({ key, label }) => ({ value: key, text: label })),
          ]}
        />
        <Button type="submit">Prefer a value</Button>
      </form>
      {parameter && (
        <CommandForm
          key={parameter.key}
          action={preferValue}
          formKey={randomUUID()}
          hidden={{ parameter: parameter.key }}
          label={`Prefer a value of ${parameter.label}`}
          className="form-stack"
        >
          <ValueBoxes
            label={parameter.label}
            help={parameter.help}
            shape={parameter.shape}
            value={now.find((one) => one.parameter === parameter.key)?.value}
          />
          <LinesBox
            name="reason"
            label="Why"
            hint="Every programme opened with it says so."
            rows={2}
            required
          />
          <SubmitButton>Prefer this value</SubmitButton>
        </CommandForm>
      )}
    </>
  )
}
