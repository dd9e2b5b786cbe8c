import { lotsAddress, samplingAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { samplingSpecified } from '@/shared/sampling/sampling-of-lot'
import { works } from '@/lib/settings/works'
import { settingsOf } from '@/shared/sampling/sampling-reads'
import { governingRequirement } from '@/shared/plan/requirement'
import { sampleConfidenceMin } from '@/shared/plan/limits/evaluation-sampling'
import { PlanShown } from './plan-shown'
import { PlannerForm } from './planner-form'
import { questionFrom, USUAL_SETTINGS } from './plan-question'

export const generateMetadata = programmeTitle(({ code }) => `Sampling planner, ${code}`)

/** How many to try of a lot, what the plan lets through, and what it proves; before any lot is there. */
export default programmePage(async ({ visit, code, searchParams: given }) => {
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: 'Sampling planner', href: samplingAddress(code) },
      ]}
      title="Sampling planner"
      supplement="How many to try of a lot, and what that proves"
    >
      {({ state: { facts } }) => {
        const stated = samplingSpecified(facts)
        const specified = stated ? settingsOf(stated) : USUAL_SETTINGS
        const { question, problems = {} } = questionFrom(given, specified, works().notation.decimal)
        const confidence = governingRequirement(sampleConfidenceMin, facts.requirements).value / 100
        return (
          <>
            <p className="section-lead">
              {stated
                ? 'Starts from what this programme specifies; what you change here changes nothing there.'
                : 'This programme does not specify its sampling yet: level II and 1.0 % are shown to begin with.'}
            </p>
            <PlannerForm code={code} given={given} specified={specified} problems={problems} />
            {question && <PlanShown question={question} confidence={confidence} />}
          </>
        )
      }}
    </ProgrammeSheet>
  )
})
