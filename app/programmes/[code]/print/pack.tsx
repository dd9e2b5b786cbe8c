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
import { Contents } from './contents'
import { DecisionsPrinted } from './decisions-printed'
import { GatePrinted } from './gate-printed'
import { ItemPrinted } from './item-printed'
import { NonconformitiesPrinted } from './nonconformities-printed'
import { PACK_PARTS, stagePart } from './parts'
import { RecordsPrinted } from './records-printed'
import { ReviewsPrinted } from './reviews-printed'
import { StudyPrinted } from './study-printed'
import { DecisionsSummed } from './summary/decisions-summed'
import { ExceptionsSummed } from './summary/exceptions-summed'
import { SignaturesSummed } from './summary/signatures-summed'

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
      <Contents view={view} />
      <Cautions of={view.judgement.items.flatMap(({ item }) => cautionsOf(item, view.judgement.findings))} />
      <div id={PACK_PARTS.summary.id} className="print-part part-body print-summary">
        <SignaturesSummed view={view} />
        <ExceptionsSummed view={view} />
        <DecisionsSummed view={view} studies={studies} />
      </div>
      <div id={PACK_PARTS.routeCard.id} className="print-part">
        <RouteCard view={view} />
      </div>
      {STAGES.map((stage) => (
        <StagePrinted key={stage} view={view} stage={stage} />
      ))}
      <Section id={PACK_PARTS.limits.id} heading={PACK_PARTS.limits.title}>
        <LimitTable
          code={view.code}
          governingRequirements={ALL_LIMITS.map((limit) =>
            governingRequirement(limit, view.state.facts.requirements),
          )}
        />
      </Section>
      <div id={PACK_PARTS.records.id} className="part-body">
        <RecordsPrinted view={view} />
      </div>
      <div id={PACK_PARTS.asked.id} className="part-body">
        <DecisionsPrinted view={view} />
      </div>
      <Section id={PACK_PARTS.studies.id} heading={PACK_PARTS.studies.title}>
        {studies.length === 0 && <p>None laid.</p>}
        {studies.map((study) => (
          <StudyPrinted key={study.number} view={view} study={study} />
        ))}
      </Section>
      <div id={PACK_PARTS.reviews.id}>
        <ReviewsPrinted view={view} reviews={reviews} />
      </div>
      <div id={PACK_PARTS.nonconformities.id}>
        <NonconformitiesPrinted nonconformities={nonconformities} />
      </div>
      <Section id={PACK_PARTS.people.id} heading={PACK_PARTS.people.title}>
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
    <div id={stagePart(stage)} className="print-stage">
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
