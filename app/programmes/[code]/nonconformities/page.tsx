import { capitalised } from '@/shared/quantity/capitalised'
import {
  newNonconformityAddress,
  nonconformitiesAddress,
  nonconformityAddress,
  tableAddress,
} from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { RuledTable } from '@/app/ui/ruled-table'
import { readNonconformities } from '@/lib/queries/nonconformities'
import { STANDINGS, standingOf } from '@/shared/nonconformities/standing'
import { refusal } from '@/shared/policy'
import { placeInWords } from './place-in-words'

export const generateMetadata = programmeTitle(({ code }) => `Nonconformities, ${code}`)

/** What was found that does not fulfil what was required, and how far it is seen to. */
export default programmePage(async ({ visit, code }) => {
  const { state } = visit.view
  const rows = (await readNonconformities(state.programme.id)).map((one) => ({
    ...one,
    standing: standingOf(one.steps),
  }))
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={nonconformitiesAddress(code)}
      place={[{ text: 'Nonconformities' }]}
      title="Nonconformities"
      supplement="What was found, where, what caused it, what was done, and whether it helped"
      cells={STANDINGS.map((standing) => ({
        label: capitalised(standing),
        value: rows.filter((one) => one.standing === standing).length,
      }))}
    >
      {(view) => (
        <>
          {!refusal('open-nonconformity', view.actor) && (
            <p className="form-actions">
              <ButtonLink href={newNonconformityAddress(code)}>Open a nonconformity</ButtonLink>
            </p>
          )}
          {rows.length === 0 ? (
            <Empty title="None is on record">
              <FirstStep
                first="One is opened here, or from the finding, lot, log, defect or record that shows it."
                refused={refusal('open-nonconformity', view.actor)}
                href={newNonconformityAddress(code)}
                does="Open the first"
              />
            </Empty>
          ) : (
            <RuledTable
              caption="Nonconformities"
              take={tableAddress(code, 'nonconformities')}
              captionHidden
              rows={rows}
              rowKey={({ number }) => number}
              columns={[
                { label: 'No.', set: 'shrink', cell: ({ number }) => number },
                {
                  label: 'What',
                  names: true,
                  cell: ({ number, title }) => <a href={nonconformityAddress(code, number)}>{title}</a>,
                },
                { label: 'Where', cell: ({ place }) => placeInWords(place) || 'not said' },
                { label: 'Found', set: 'shrink', cell: ({ foundOn }) => <Day at={foundOn} /> },
                {
                  label: 'Seen to by',
                  set: 'shrink',
                  cell: ({ owner }) => <DepartmentTag department={owner} />,
                },
                { label: 'Stands', set: 'shrink', cell: ({ standing }) => standing },
              ]}
            />
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})
