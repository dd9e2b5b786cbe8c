import { notFound } from 'next/navigation'
import { itemAddress, newOptionAddress, optionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { readOptionStudy } from '@/lib/queries/option-studies'
import { compareOptions } from '@/shared/gate/option-outcome'
import { itemsOf } from '@/shared/gate/option-study'
import { standing, studyRevision } from '@/shared/gate/study-revision'
import { refusal } from '@/shared/policy'
import { itemTitle } from '../study-table'
import { Adopt } from './adopt'
import { Adopted } from './adopted'
import { Answers } from './answers'
import { CostCase } from './cost-case'
import { Revising } from './revising'
import { SideBySide } from './side-by-side'

export const generateMetadata = programmeTitle<{ study: string }>(
  ({ code, study }) => `Options ${study}, ${code}`,
)

/** Alternatives for one choice: what each would turn, undo and cost, and which was adopted, and why. */
export default programmePage<{ study: string }, { boards?: string; years?: string; lot?: string }>(
  async ({ visit, code, params: { study: number }, searchParams: cost }) => {
    const study = /^\d{1,6}$/.test(number)
      ? await readOptionStudy(visit.view.state.programme.id, Number(number))
      : undefined
    if (!study) notFound()
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={optionsAddress(code)}
        place={[{ text: 'Options', href: optionsAddress(code) }, { text: `Study ${number}` }]}
        title={study.title}
        supplement={
          <>
            Option study {number}, of{' '}
            {itemsOf(study).map((key, position) => (
              <span key={key}>
                {position > 0 && ', '}
                <a href={itemAddress(code, key)}>{itemTitle(visit.view, key)}</a>
              </span>
            ))}
          </>
        }
        cells={[
          { label: 'Opened by', value: study.openedBy },
          { label: 'On', value: <Day at={study.openedAt} /> },
          { label: 'Alternatives', value: standing(study.alternatives).length },
          { label: 'Revision', value: studyRevision(study.alternatives) },
          { label: 'Adopted', value: study.adoption?.name ?? 'none yet', wide: true },
        ]}
      >
        {(view) => {
          const comparison = compareOptions(view.state, view.judgement, standing(study.alternatives))
          return (
            <>
              <Adopted view={view} study={study} />
              <SideBySide view={view} study={study} comparison={comparison} />
              <CostCase view={view} study={study} comparison={comparison} asked={cost} />
              <Answers view={view} study={study} />
              <Revising view={view} study={study} />
              <Adopt view={view} study={study} comparison={comparison} />
              {!refusal('open-option-study', view.actor) && (
                <p className="print-hidden">
                  <a href={newOptionAddress(view.code, [], study.number)}>New study from these options</a>
                </p>
              )}
            </>
          )
        }}
      </ProgrammeSheet>
    )
  },
)
