import { randomUUID } from 'node:crypto'
import { forbidden } from 'next/navigation'
import { nonconformitiesAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { placeAddress } from '@/app/place-address'
import { SubmitButton } from '@/app/ui/submit-button'
import { PLACE_NAMES, type NonconformityPlace } from '@/shared/nonconformities/nonconformity'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { subjectFromText } from '@/shared/reviews/subject'
import { placeOfSubject, subjectInWords } from '@/shared/reviews/subject-in-words'
import { openNonconformity } from '../actions'
import { filledInFrom } from './filled-in'

export const generateMetadata = programmeTitle(({ code }) => `Open a nonconformity, ${code}`)

/** The form for a nonconformity, filled in from where it was found. */
export default programmePage<object, { source?: string }>(
  async ({ visit, code, searchParams: { source: asked = '' } }) => {
    if (refusal('open-nonconformity', visit.view.actor)) forbidden()
    const source = subjectFromText(asked)
    const filled = filledInFrom(visit.view, source)
    const place = source && placeOfSubject(source)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={nonconformitiesAddress(code)}
        place={[{ text: 'Nonconformities', href: nonconformitiesAddress(code) }, { text: 'New' }]}
        title="Open a nonconformity"
        supplement={
          source && place ? (
            <>
              From <a href={placeAddress(code, place)}>{subjectInWords(source)}</a>
            </>
          ) : undefined
        }
      >
        {(view) => (
          <CommandForm
            action={openNonconformity}
            formKey={randomUUID()}
            hidden={{
              programme: code,
              ...(source && { 'source.kind': source.kind, 'source.key': source.key }),
            }}
            label="Open a nonconformity"
            className="form-narrow"
          >
            <TextBox name="title" label="What, in a few words" defaultValue={filled.title} required />
            <LinesBox name="found" label="What was found" rows={4} defaultValue={filled.found} required />
            <TextBox
              name="foundOn"
              type="date"
              label="Found on"
              defaultValue={view.state.facts.today}
              required
            />
            <fieldset className="field field-fieldset">
              <legend className="field-label">Where, as far as it is known</legend>
              <div className="form-row">
                {(Object.keys(PLACE_NAMES) as (keyof NonconformityPlace)[]).map((where) => (
                  <TextBox
                    key={where}
                    name={`place.${where}`}
                    label={PLACE_NAMES[where]}
                    defaultValue={filled.place[where]}
                    optional
                  />
                ))}
              </div>
            </fieldset>
            <ChoiceBox
              name="owner"
              label="Seen to by"
              defaultValue={view.actor.departments[0] ?? 'quality'}
              choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
            />
            <SubmitButton>Open it</SubmitButton>
          </CommandForm>
        )}
      </ProgrammeSheet>
    )
  },
)
