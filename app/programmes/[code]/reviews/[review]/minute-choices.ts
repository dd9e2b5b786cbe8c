import { randomUUID } from 'node:crypto'
import type { Choice } from '@/app/ui/field'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ACTION_KINDS } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import type { AgendaPoint } from '@/shared/reviews/agenda'
import { LINE_KINDS, LINE_NAMES, type LineKind, type Review } from '@/shared/reviews/review'
import { subjectText } from '@/shared/reviews/subject'
import { subjectNamed } from './subject-link'

/** All that the form of a line offers. */
export interface MinuteChoices {
  readonly formKey: string
  readonly hidden: Readonly<Record<string, string | number>>
  /** Grows with each line, so that the form begins anew. */
  readonly written: number
  readonly mayWrite: boolean
  readonly abouts: readonly Choice[]
  readonly about: string
  readonly kinds: readonly { readonly value: LineKind; readonly text: string }[]
  readonly as: LineKind
  readonly items: readonly Choice[]
  readonly owners: readonly Choice[]
  readonly departments: readonly Choice[]
  readonly questions: readonly Choice[]
}

const GENERAL: Choice = { value: '', text: 'the meeting as a whole' }

/** What a line can be about, who can owe an action, and what was chosen for the line before. */
export function minuteChoices(
  view: ProgrammeView,
  review: Review,
  agenda: readonly AgendaPoint[],
  asked: { readonly about: string | undefined; readonly as: string | undefined },
): MinuteChoices {
  const { items, members } = view.state
  const points = review.lines.filter(({ kind, struck }) => kind === 'point' && !struck)
  const abouts: Choice[] = [
    GENERAL,
    ...points.map(({ number, text }) => ({ value: `point:${number}@`, text })),
    ...agenda.map(({ about, item, open }) => ({
      value: `${subjectText(about)}@${item ?? ''}`,
      text: `${subjectNamed(view, review, about)} (${open})`,
    })),
    ...items
      .filter(
        ({ definition: { key } }) => !agenda.some(({ about }) => about.kind === 'item' && about.key === key),
      )
      .map(({ definition: { key, title } }) => ({ value: `item:${key}@${key}`, text: title })),
  ]
  const mayAsk = view.actor.departments.length > 0
  return {
    formKey: randomUUID(),
    hidden: { programme: view.code, review: review.number },
    written: review.lines.length,
    mayWrite: !refusal('write-minute', view.actor),
    abouts,
    about: abouts.find(({ value }) => value === asked.about)?.value ?? GENERAL.value,
    kinds: LINE_KINDS.filter((kind) => mayAsk || kind !== 'action').map((value) => ({
      value,
      text: LINE_NAMES[value],
    })),
    as: LINE_KINDS.find((kind) => kind === asked.as) ?? 'note',
    items: items.map(({ definition: { key, title } }) => ({ value: key, text: title })),
    owners: members
      .filter(
        ({ department }) =>
          !(view.actor.departments.length === 1 && view.actor.departments[0] === department),
      )
      .map(({ personId, name, department }) => ({
        value: `${personId} ${department}`,
        text: `${name}, ${DEPARTMENT_NAMES[department].toLowerCase()}`,
      })),
    departments: view.actor.departments.map((value) => ({ value, text: DEPARTMENT_NAMES[value] })),
    questions: ACTION_KINDS.map((value) => ({ value, text: value })).reverse(),
  }
}
