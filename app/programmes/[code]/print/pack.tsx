import { LimitTable } from '@/app/findings/limit-table'
import { Cautions } from '@/app/ui/cautions'
import { Digest } from '@/app/ui/digest'
import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionStudy } from '@/shared/gate/option-study'
import { ALL_LIMITS } from '@/shared/catalogue/standard-plan'
import type { Nonconformity } from '@/shared/nonconformities/nonconformity'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { cautionsOf } from '@/shared/gate/cautions'
import { governingRequirement } from '@/shared/plan/requirement'
import { STAGE_AIMS, STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import type { Review } from '@/shared/reviews/review'
import { RouteCard } from '../route-card'
import { DecisionsPrinted } from './decisions-printed'
import { GatePrinted } from './gate-printed'
import { ItemPrinted } from './item-printed'
import { NonconformitiesPrinted } from './nonconformities-printed'
import { RecordsPrinted } from './records-printed'
import { ReviewsPrinted } from './reviews-printed'
import { StudyPrinted } from './study-printed'

interface PackProps {
  view: ProgrammeView
  studies: readonly OptionStudy[]
  reviews: readonly Review[]
  nonconformities: readonly Nonconformity[]
}

/** The whole programme in the order of its stages. */
export function Pack({ view, studies, reviews, nonconformities }: PackProps) {
  return (
    <div className="part-body print-pack">
      <Cautions of={view.judgement.items.flatMap(({ item }) => cautionsOf(item, view.judgement.findings))} />
      <RouteCard view={view} />
      {STAGES.map((stage) => (
        <StagePrinted key={stage} view={view} stage={stage} />
      ))}
      <Section heading="Limits in force">
        <LimitTable
          code={view.code}
          governingRequirements={ALL_LIMITS.map((limit) =>
            governingRequirement(limit, view.state.facts.requirements),
          )}
        />
      </Section>
      <RecordsPrinted view={view} />
      <DecisionsPrinted view={view} />
      <Section heading="Option studies">
        {studies.length === 0 && <p>None laid.</p>}
        {studies.map((study) => (
          <StudyPrinted key={study.number} view={view} study={study} />
        ))}
      </Section>
      <ReviewsPrinted view={view} reviews={reviews} />
      <NonconformitiesPrinted nonconformities={nonconformities} />
      <Section heading="People and trail">
        <Facts
          facts={[
            ...view.state.members.map(({ name, department }) => ({
              label: name,
              value: DEPARTMENT_NAMES[department],
            })),
            { label: 'Entries in the trail', value: view.head.seq },
          ]}
        />
        <p>
          Newest hash of the trail: <Digest value={view.head.hash} full />
        </p>
        <p className="section-lead">
          A trail whose entry {view.head.seq} has another hash than this was rewritten after this was printed.
        </p>
      </Section>
    </div>
  )
}

function StagePrinted({ view, stage }: { view: ProgrammeView; stage: Stage }) {
  const gate = view.judgement.gates.find((entry) => entry.stage === stage)
  return (
    <div className="print-stage">
      <Section heading={`${STAGE_NAMES[stage]} in full`} lead={STAGE_AIMS[stage]}>
        {gate && <GatePrinted gate={gate} />}
        {view.judgement.items
          .filter(({ item }) => item.definition.stage === stage)
          .map((state) => (
            <ItemPrinted key={state.item.definition.key} view={view} state={state} />
          ))}
      </Section>
    </div>
  )
}
