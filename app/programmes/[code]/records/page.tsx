import { recordKindAddress, recordsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

export const generateMetadata = programmeTitle(({ code }) => `Records, ${code}`)

/** Every kind of record the rules read beside lots, logs and inspections. */
export default programmePage(async ({ visit, code }) => {
  const kinds: RecordKind[] = Object.values(RECORD_KINDS)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={recordsAddress(code)}
      place={[{ text: 'Records' }]}
      title="Records"
      supplement="Training, cleanliness, rework, tests and what else the stages ask for"
    >
      {(view) =>
        STAGES.map((stage) => {
          const own = kinds.filter((kind) => kind.stage === stage)
          return (
            own.length > 0 && (
              <Section key={stage} heading={STAGE_NAMES[stage]}>
                <RuledTable
                  caption={`Records of the ${STAGE_NAMES[stage].toLowerCase()} stage`}
                  captionHidden
                  rows={own}
                  rowKey={({ key }) => key}
                  columns={[
                    {
                      label: 'Records',
                      names: true,
                      cell: ({ key, plural }) => <a href={recordKindAddress(view.code, key)}>{plural}</a>,
                    },
                    { label: 'What for', cell: ({ help }) => help },
                    {
                      label: 'Kept by',
                      cell: ({ departments }) =>
                        departments.map((department) => DEPARTMENT_NAMES[department]).join(', '),
                    },
                    {
                      label: 'So far',
                      set: 'number',
                      cell: ({ key }) => view.state.facts.records.byKind.get(key)?.length ?? 0,
                    },
                  ]}
                />
              </Section>
            )
          )
        })
      }
    </ProgrammeSheet>
  )
})
