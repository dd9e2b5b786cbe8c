import { inspectionsAddress, residueAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { InspectionPlaces } from '../places'
import { Extracts } from './extracts'
import { Insulation } from './insulation'
import { Removal } from './removal'

export const generateMetadata = programmeTitle(({ code }) => `Residue and insulation, ${code}`)

/** What is left of the flux: removal tried, salts extracted, insulation in damp heat. */
export default programmePage(async ({ visit, code }) => {
  const { byKind } = visit.view.state.facts.records
  const countOf = (kind: string) => byKind.get(kind)?.length ?? 0
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'Residue and insulation' }]}
      title="Residue and insulation"
      supplement="What is left of the flux after cleaning, and whether it insulates in damp heat"
      cells={[
        { label: 'Removal trials', value: countOf('flux-removal') },
        { label: 'Extracts', value: countOf('ionic-cleanliness') },
        { label: 'Insulation readings', value: countOf('insulation-resistance') },
      ]}
    >
      {(view) => (
        <>
          <InspectionPlaces code={view.code} at={residueAddress(view.code)} />
          <Removal view={view} />
          <Extracts view={view} />
          <Insulation view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
})
