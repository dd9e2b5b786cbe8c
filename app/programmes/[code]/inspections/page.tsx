import { benchAddress, inspectionsAddress, tableAddress } from '@/app/addresses'
import { GatesShut } from '@/app/frame/gates-shut'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { TakeTable } from '@/app/ui/take-table'
import { ButtonLink } from '@/app/ui/button'
import { formatNumber } from '@/shared/quantity/format'
import { STAGE_OF_INSPECTION } from '@/shared/gate/shut-gates'
import { refusal } from '@/shared/policy'
import { AgainstBudget } from './against-budget'
import { AssembliesSeen } from './assemblies-seen'
import { defectFactsOf } from './defect-facts'
import { DefectiveJoints } from './defective-joints'
import { ManyAtOnce } from './forms'
import { PlanKept } from './plan-kept'
import { InspectionPlaces } from './places'
import { planRead } from './plan-read'
import { WhereTheyLie } from './where-they-lie'
import { Yields } from './yields'

export const generateMetadata = programmeTitle(({ code }) => `Inspections, ${code}`)

/** Assemblies inspected, the defects found on them, and what they prove. */
export default programmePage<object, { find?: string; page?: string }>(
  async ({ visit, code, searchParams: { find = '', page = '1' } }) => {
    const facts = defectFactsOf(visit.view)
    const plan = await planRead(visit.view)
    const { record, held = [] } = facts
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={inspectionsAddress(code)}
        place={[{ text: 'Inspections' }]}
        title="Inspections"
        supplement="Joints inspected and defects found, judged against the joint budget of the specification"
        cells={[
          { label: 'Assemblies', value: record.assembliesSeen },
          { label: 'Joints inspected', value: record.jointsSeen },
          { label: 'Defective joints', value: record.defective },
          { label: 'Per million', value: held[0] ? formatNumber(held[0].perMillion, 3) : '–' },
          { label: 'Budget', value: held[0] ? formatNumber(held[0].status.budgetPerMillion, 3) : 'not set' },
        ]}
      >
        {(view) => (
          <>
            <InspectionPlaces code={view.code} at={inspectionsAddress(view.code)} />
            {!refusal('record-inspection', view.actor) && (
              <div className="form-stack">
                <GatesShut view={view} stage={STAGE_OF_INSPECTION} what="Assemblies are inspected" />
                <p>
                  <ButtonLink kind="primary" href={benchAddress(view.code)}>
                    Inspect at the bench
                  </ButtonLink>
                </p>
                <ManyAtOnce view={view} />
              </div>
            )}
            {
              <>
                <AgainstBudget view={view} facts={facts} />
                <WhereTheyLie view={view} facts={facts} plan={plan} />
                <DefectiveJoints view={view} facts={facts} />
                <Yields view={view} facts={facts} />
                <PlanKept view={view} />
              </>
            }
            <AssembliesSeen view={view} find={find} page={Number.parseInt(page, 10) || 1} />
            <TakeTable address={tableAddress(view.code, 'inspections')} what="All inspections" />
            <TakeTable address={tableAddress(view.code, 'defects')} what="All defects" />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
