import { concessionsAddress, routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import { CONCESSION_STANDINGS, concessionStatus, isPermit } from '@/shared/gate/concession'
import { ConcessionTable } from './concession-table'

export const generateMetadata = programmeTitle(({ code }) => `Concessions, ${code}`)

/** Everything that a programme lets pass or permits to depart, in force or not. */
export default programmePage(async ({ visit, code }) => {
  const { state, judgement } = visit.view
  const { concessions, facts } = state
  const standing = concessions.map(
    (entry) => CONCESSION_STANDINGS[concessionStatus(entry, judgement.findings.get(entry.rule), facts)],
  )
  const permits = concessions.filter(isPermit)
  const after = concessions.filter((entry) => !isPermit(entry))
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[{ text: 'Concessions and deviation permits', href: concessionsAddress(code) }]}
      title="Concessions and deviation permits"
      supplement="What may pass or depart, for how many or until when, signed by design and quality"
      cells={[
        { label: 'In force', value: standing.filter(({ lets }) => lets).length },
        { label: 'To decide', value: standing.filter(({ waits }) => waits).length },
        { label: 'In all', value: concessions.length },
      ]}
    >
      {(view) => (
        <>
          <Section
            heading="Concessions"
            lead="Asked for on a finding that stands; each holds for just that finding."
          >
            {after.length > 0 ? (
              <ConcessionTable view={view} concessions={after} withFinding />
            ) : (
              <Empty title="None asked for">
                The page of a finding that fails has the form to ask for one;{' '}
                <a href={routeCardAddress(view.code)}>the route card</a> leads to each.
              </Empty>
            )}
          </Section>
          <Section
            heading="Deviation permits"
            lead="Asked for before anything departed; a finding that then comes passes where it lies within them."
          >
            {permits.length > 0 ? (
              <ConcessionTable view={view} concessions={permits} withFinding />
            ) : (
              <Empty title="None asked for">A check’s own page has the form to ask for one.</Empty>
            )}
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
})
