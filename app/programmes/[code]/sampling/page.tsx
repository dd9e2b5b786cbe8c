import { addressPart } from '@/app/address-part'
import { lotsAddress, samplingAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { works } from '@/lib/settings/works'
import { samplingContextOf } from '@/shared/sampling/sampling-of-lot'
import { governingRequirement } from '@/shared/plan/requirement'
import { sampleConfidenceMin } from '@/shared/plan/limits/evaluation-sampling'
import { PlanShown } from './plan-shown'
import { PlannerForm } from './planner-form'
import { questionFrom, USUAL_SETTINGS } from './plan-question'

interface SamplingPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<Record<string, string | undefined>>
}

export async function generateMetadata({ params }: SamplingPageProps) {
  return { title: `Sampling planner, ${addressPart((await params).code)} – Liquidus` }
}

/** How many to try of a lot, what the plan lets through, and what it proves; before any lot is there. */
export default async function SamplingPage({ params, searchParams }: SamplingPageProps) {
  const { code: asked } = await params
  const given = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view.code
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
        const context = samplingContextOf(facts)
        const specified = context?.settings ?? USUAL_SETTINGS
        const { question, problems = {} } = questionFrom(given, specified, works().notation.decimal)
        const confidence = governingRequirement(sampleConfidenceMin, facts.requirements).value / 100
        return (
          <>
            <p className="section-lead">
              {context
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
}
