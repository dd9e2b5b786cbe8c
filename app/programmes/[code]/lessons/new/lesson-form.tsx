import { randomUUID } from 'node:crypto'
import { newLessonAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, TextBox } from '@/app/forms/fields'
import { ChangeItemFields, ChangeLimitFields } from './change-fields'
import { sourceChoices } from './source-choices'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { proposeLesson } from '@/app/forms/command-actions'

interface LessonFormProps {
  view: ProgrammeView
  /** "kind:key" of what taught it, '' when it is still to be chosen. */
  source: string
  change: 'item' | 'limit'
}

export function LessonForm({ view, source, change }: LessonFormProps) {
  const [kind, key] = source.split(/:(.*)/s)
  const other = change === 'item' ? 'limit' : 'item'
  return (
    <CommandForm
      action={proposeLesson}
      formKey={randomUUID()}
      hidden={{ programme: view.code, 'change.kind': change }}
      label="Propose a lesson"
      className="form-narrow"
    >
      <ChoiceBox
        name="source"
        label="Source"
        defaultValue={source}
        choices={[{ value: '', text: 'Choose' }, ...sourceChoices(view)]}
        required
      />
      <TextBox name="title" label="Title" maxLength={120} required />
      <LinesBox
        name="learnt"
        label="What was learnt"
        hint="What happened, why, and what would have prevented it: for people who were not there."
        maxLength={2000}
        required
      />
      <p className="field-hint">
        {change === 'item'
          ? 'Later programmes get an item of their plan. '
          : 'Later programmes get a stricter company limit. '}
        <a href={newLessonAddress(view.code, { ...(key && { kind, key }), change: other })}>
          {other === 'limit' ? 'Propose a stricter limit instead' : 'Propose an item instead'}
        </a>
      </p>
      {change === 'item' ? <ChangeItemFields /> : <ChangeLimitFields />}
      <SubmitButton kind="primary">Propose it</SubmitButton>
    </CommandForm>
  )
}
