import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { answerInWords } from '@/shared/gate/answer-in-words'
import type { ChangeNotice } from '@/shared/gate/change-notice'
import { itemsOf, type OptionStudy } from '@/shared/gate/option-study'
import type { ActionEntry, ProgrammeState } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { Origins } from './origins'
import type { WhyStep } from './step'

/** What a study or a notice can have brought. */
type Target = { readonly parameter: string } | { readonly limit: string }

/** The study through which a value or a limit came at an instant; every row of one act has the instant of the act. */
export const studyBringing = (
  studies: readonly OptionStudy[],
  at: string,
  target: Target,
): OptionStudy | undefined =>
  studies.find(({ adoption, alternatives }) => {
    const adopted = adoption?.at === at ? alternatives.find(({ name }) => name === adoption.name) : undefined
    if (!adopted) return false
    return 'parameter' in target
      ? target.parameter in adopted.values
      : adopted.limits.some(({ limit }) => limit === target.limit)
  })

/** Through what a value or a requirement of an instant came: a change notice, or a study with its answers. */
export function broughtBy(
  { at, notice: number }: { readonly at: string; readonly notice: number | null },
  target: Target,
  { actions }: Pick<ProgrammeState, 'actions'>,
  { studies, notices }: Pick<Origins, 'studies' | 'notices'>,
): WhyStep[] {
  const notice = notices.find((entry) => entry.number === number)
  const study = studyBringing(studies, at, target)
  return [...(notice ? [noticeStep(notice)] : []), ...(study ? [studyStep(study, actions)] : [])]
}

/** A study whose alternative was adopted, with the answers it rests on. */
function studyStep(study: OptionStudy, actions: readonly ActionEntry[]): WhyStep {
  const { number, title, adoption, alternatives } = study
  const adopted = alternatives.find(({ name }) => name === adoption?.name)
  const rests = actions.filter(
    (action) => action.answer && (action.study === number || adopted?.actions.includes(action.number)),
  )
  return {
    what: `Study ${number}, ${title}`,
    ...(adoption && {
      says: `${adoption.name} was adopted, of ${alternatives.map(({ name }) => name).join(', ')}`,
      by: { name: adoption.by, at: adoption.at },
      words: adoption.why,
      recorded: { at: adoption.at, name: itemsOf(study)[0] ?? study.itemKey },
    }),
    place: { kind: 'study', number },
    rests: rests.map(answerStep),
  }
}

/** A change notice, with what each department answered. */
function noticeStep(notice: ChangeNotice): WhyStep {
  const { number, title, reason, changes, answers, disposition } = notice
  return {
    what: `Change notice ${number}, ${title}`,
    ...(disposition && {
      says: `${disposition.kind}, of ${changes.length === 1 ? 'one change' : `${changes.length} changes`}`,
      by: { name: disposition.byName, at: disposition.at },
    }),
    words: reason,
    lines: changes.map(({ change }) => changeInWords(change)),
    place: { kind: 'notice', number },
    rests: answers.map(({ department, agrees, reason: why, personName, at }) => ({
      what: `${DEPARTMENT_NAMES[department]} ${agrees ? 'agreed' : 'objected'}`,
      by: { name: personName, at },
      words: why,
    })),
  }
}

/** What a department answered to a question. */
export const answerStep = (action: ActionEntry): WhyStep => ({
  what: `Action ${action.number}, ${action.question}`,
  ...(action.answer && { says: answerInWords(action.answer), words: action.answer.comment }),
  ...(action.answeredByName &&
    action.answeredAt && {
      by: { name: `${action.answeredByName} (${DEPARTMENT_NAMES[action.to]})`, at: action.answeredAt },
      recorded: { at: action.answeredAt, name: action.itemKey },
    }),
  lines: action.files.map(({ fileName, note }) => `With it: ${fileName}${note ? `, ${note}` : ''}`),
  place: { kind: 'action', number: action.number },
})
