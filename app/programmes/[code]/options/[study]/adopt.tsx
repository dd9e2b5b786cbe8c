import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox } from '@/app/forms/fields'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionComparison, OptionOutcome } from '@/shared/gate/option-outcome'
import { letterOf } from '@/shared/gate/option-letter'
import { specifiedOf } from '@/shared/cost/specified-alternatives'
import { studyRevision } from '@/shared/gate/study-revision'
import type { OptionStudy } from '@/shared/gate/option-study'
import { findItem } from '@/shared/catalogue/standard-plan'
import { partRefusal, refusal } from '@/shared/policy'
import { adoptOption } from '@/app/forms/command-actions'

interface AdoptProps {
  view: ProgrammeView
  study: OptionStudy
  comparison: OptionComparison
}

/** The form that decides the study, for those whose values it would change and for the lead; others are told why not. */
export function Adopt({ view, study, comparison: { outcomes, parameters } }: AdoptProps) {
  if (study.adoption) return null
  const unknown = specifiedOf(study.number, outcomes, view.state.actions).map(
    ({ drawn }) => drawn.gaps.length,
  )
  const choices = outcomes.map((outcome, position) => ({
    outcome,
    letter: letterOf(position),
    refused: refusedFor(view, study, outcome),
  }))
  const open = choices.filter((choice) => !choice.refused)
  return (
    <Section
      id="adopt"
      heading="Adopt one"
      lead="Its values become the specification’s and its limits are stated, of every item at once and with this reason; it cannot be undone, only decided again in another study."
    >
      {open.length === 0 && <Notice kind="refusal">{choices[0]?.refused}</Notice>}
      {open.length > 0 && (
        <CommandForm
          action={adoptOption}
          formKey={randomUUID()}
          hidden={{
            programme: view.code,
            study: study.number,
            revision: studyRevision(study.alternatives),
            ...Object.fromEntries(
              parameters.map((key) => [`seen.${key}`, view.state.revisions.get(key)?.number ?? 0]),
            ),
          }}
          label="Adopt one"
          className="form-narrow"
        >
          <PickBox
            name="alternative"
            label="Alternative"
            choices={choices.map(({ outcome, letter, refused: why }, position) => ({
              value: outcome.alternative.name,
              text: `${letter}: ${outcome.alternative.name}${consequence(outcome, unknown[position] ?? 0)}`,
              disabled: why !== undefined,
            }))}
            required
          />
          {choices
            .filter((choice) => choice.refused)
            .map(({ letter, refused: why }) => (
              <p key={letter} className="field-hint">
                {letter} is not yours to adopt. {why}
              </p>
            ))}
          <LinesBox
            name="reason"
            label="Why"
            hint="It stands in the trail beside the values."
            rows={3}
            required
          />
          <SubmitButton>Adopt it</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}

function refusedFor(view: ProgrammeView, { itemKey }: OptionStudy, { changes, limits }: OptionOutcome) {
  const item =
    view.state.items.find(({ definition }) => definition.key === itemKey)?.definition ?? findItem(itemKey)
  return item
    ? refusal('adopt-option', view.actor, { item, changes, limits })
    : partRefusal('adopt-option', view.actor)
}

function consequence(
  { changes, limits, preview: { turned, approvals } }: OptionOutcome,
  unknown: number,
): string {
  const costs = unknown > 0 ? `${unknown} ${unknown === 1 ? 'figure' : 'figures'} of its cost not known` : ''
  if (changes.size + limits.length === 0) return ` (nothing changes${costs && `, ${costs}`})`
  const lapse = approvals.length > 0 ? `${approvals.length} approvals lapse` : ''
  const worse = turned.filter(({ after }) => after === 'fails').length
  const fails = worse > 0 ? `${worse} ${worse === 1 ? 'finding fails' : 'findings fail'}` : ''
  const said = [fails, lapse, costs].filter(Boolean).join(', ')
  return said ? ` (${said})` : ''
}
