import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { assembliesAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { assemblyLife } from '@/shared/records/assembly-life'
import { LifeTable } from './life-table'
import { LotsInIt } from './lots-in-it'

export const generateMetadata = programmeTitle<{ serial: string }>(({ serial }) => `Assembly ${serial}`)

/** One assembly: the lots it is made of, and what was done to it from delivery to service. */
export default programmePage<{ serial: string }>(async ({ visit, code, params: { serial: key } }) => {
  const serial = addressPart(key)
  const life = assemblyLife(visit.view.state.facts.records, serial)
  if (!life) notFound()
  const defects = life.inspections.reduce((sum, { defects: found }) => sum + found.length, 0)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: 'Assemblies', href: assembliesAddress(code) },
        { text: serial },
      ]}
      title={`Assembly ${serial}`}
      supplement="The lots it is made of, and what was done to it"
      cells={[
        { label: 'Lots', value: life.lots.length },
        { label: 'Inspections', value: life.inspections.length },
        { label: 'Defects found', value: defects },
      ]}
    >
      {(view) => (
        <>
          <LotsInIt view={view} life={life} />
          <LifeTable code={view.code} events={life.events} />
        </>
      )}
    </ProgrammeSheet>
  )
})
