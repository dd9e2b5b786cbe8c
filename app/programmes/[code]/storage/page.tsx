import { lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { lotClocks } from '@/shared/storage/lot-clocks'
import { StorageClocks } from './storage-clocks'
import { StoreClimate } from './store-climate'

export const generateMetadata = programmeTitle(({ code }) => `Storage, ${code}`)

/** Which lot must be soldered by when, and which is to be used first. */
export default programmePage(async ({ visit, code }) => {
  const clocks = lotClocks(visit.view.state.facts)
  const count = (wanted: (days: number | undefined) => boolean) =>
    clocks?.filter(({ daysLeft }) => wanted(daysLeft)).length ?? 0
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[{ text: 'Lots', href: lotsAddress(code) }, { text: 'Storage' }]}
      title="Storage"
      supplement="Soldered while its evaluation stands; first expired, first used"
      cells={
        clocks
          ? [
              { label: 'In store', value: clocks.length },
              { label: 'Expired', value: count((days) => days !== undefined && days < 0) },
              { label: 'Never tested', value: count((days) => days === undefined) },
            ]
          : []
      }
    >
      {(view) => (
        <>
          <StorageClocks view={view} clocks={clocks} />
          <StoreClimate view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
})
