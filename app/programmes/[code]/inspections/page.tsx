import { inspectionAddress, inspectionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { formatNumber } from '@/shared/quantity/format'
import { refusal } from '@/shared/policy'
import { DefectPictures } from './defect-pictures'
import { ManyAtOnce } from './forms'
import { InspectionPlaces } from './places'

interface InspectionsPageProps {
  params: Promise<{ code: string }>
}

const SHOWN = 100

/** Assemblies looked at, the defects found on them, and where they lie. */
export default async function InspectionsPage({ params }: InspectionsPageProps) {
  const { code: asked } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const inspections = visit.view?.state.facts.records.inspections ?? []
  const joints = inspections.reduce((sum, { jointsSeen }) => sum + jointsSeen, 0)
  const defective = inspections.reduce(
    (sum, { defects }) => sum + new Set(defects.map(({ joint }) => joint)).size,
    0,
  )
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections' }]}
      title="Inspections"
      supplement="Joints seen and defects found, judged against the joint budget of the specification"
      cells={[
        { label: 'Assemblies', value: inspections.length },
        { label: 'Joints seen', value: joints },
        { label: 'Defective joints', value: defective },
        {
          label: 'Per million',
          value: joints > 0 ? formatNumber((defective / joints) * 1e6, 3) : 'none seen',
        },
      ]}
    >
      {(view) => (
        <>
          <InspectionPlaces code={view.code} at={inspectionsAddress(view.code)} />
          {!refusal('record-inspection', view.actor) && <ManyAtOnce view={view} />}
          <DefectPictures view={view} />
          <Section
            heading="Assemblies looked at"
            lead={inspections.length > SHOWN ? `The newest ${SHOWN} of ${inspections.length}.` : undefined}
          >
            {inspections.length > 0 ? (
              <RuledTable
                caption="Inspections"
                captionHidden
                rows={inspections.slice(-SHOWN).reverse()}
                rowKey={({ id }) => id}
                columns={[
                  {
                    label: 'Assembly',
                    names: true,
                    cell: ({ id, assembly }) => <a href={inspectionAddress(view.code, id)}>{assembly}</a>,
                  },
                  { label: 'On', set: 'shrink', cell: ({ inspectedOn }) => <Day at={inspectedOn} /> },
                  { label: 'By', cell: ({ inspector }) => inspector },
                  { label: 'Magnified', set: 'number', cell: ({ magnification }) => `${magnification} ×` },
                  { label: 'Joints seen', set: 'number', cell: ({ jointsSeen }) => jointsSeen },
                  {
                    label: 'Defects',
                    cell: ({ defects }) =>
                      defects.map(({ kind, joint }) => `${kind} at ${joint}`).join('; ') || 'none',
                  },
                ]}
              />
            ) : (
              <Empty title="Nothing inspected yet" />
            )}
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
}
