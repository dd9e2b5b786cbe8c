import { defectGuideAddress, recordKindAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { reworkSummary } from '@/shared/inspection/rework-summary'
import type { DefectFacts } from './defect-facts'
import { recordsOfKind } from '@/shared/records/records-of-kind'

const SHOWN = 50

/** Every defective joint on record, whoever found it, and whether it was mended. */
export function DefectiveJoints({ view, facts: { record } }: { view: ProgrammeView; facts: DefectFacts }) {
  if (record.defective === 0) return null
  const rework = recordsOfKind(view.state.facts.records, 'rework')
  const mended = new Map(
    reworkSummary(rework).joints.map((joint) => [keyOf(joint.assembly, joint.joint), joint.heats]),
  )
  const electrical = record.defectiveJoints.filter(({ foundBy }) => foundBy === 'electrical test').length
  return (
    <Section
      heading="Defective joints"
      lead={`${record.defective} in all: ${record.defectiveJoints.length - electrical} seen, ${electrical + record.unnamed} found only by electrical test${record.unnamed > 0 ? `, of which ${record.unnamed} nobody named` : ''}. Each counts once, however it was found.`}
      aside={<a href={recordKindAddress(view.code, 'electrical-test')}>Electrical tests</a>}
    >
      <RuledTable
        caption="Defective joints"
        captionHidden
        rows={record.defectiveJoints.slice(-SHOWN).reverse()}
        rowKey={({ assembly, joint }) => `${assembly} ${joint}`}
        columns={[
          { label: 'Joint', names: true, cell: ({ joint }) => joint },
          { label: 'Assembly', cell: ({ assembly }) => assembly },
          {
            label: 'Kind',
            cell: ({ kinds }) =>
              kinds.length === 0
                ? 'not said'
                : kinds.map((kind, at) => (
                    <span key={kind}>
                      {at > 0 && ', '}
                      <a href={`${defectGuideAddress(view.code)}#${kind.replaceAll(' ', '-')}`}>{kind}</a>
                    </span>
                  )),
          },
          { label: 'Found by', cell: ({ foundBy }) => foundBy },
          {
            label: 'Rework',
            cell: ({ assembly, joint }) => {
              const heats = mended.get(keyOf(assembly, joint))
              return heats === undefined
                ? 'none on record'
                : `heated ${heats === 1 ? 'once' : `${heats} times`}`
            },
          },
        ]}
      />
    </Section>
  )
}

const keyOf = (assembly: string, joint: string): string =>
  `${assembly.trim().toLowerCase()}\n${joint.trim().toLowerCase()}`
