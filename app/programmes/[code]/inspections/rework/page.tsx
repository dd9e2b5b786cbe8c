import { inspectionsAddress, reworkAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { readPictures } from '@/lib/queries/pictures'
import { InspectionPlaces } from '../places'
import { HeatsAndCost } from './heats-and-cost'
import { Sections } from './sections'
import { Waiting } from './waiting'

export const generateMetadata = programmeTitle(({ code }) => `Rework desk and sections, ${code}`)

/** Joints waiting for the iron and for another look; joints mended, how often each was heated and what it cost; and joints cut open. */
export default programmePage<object, { joint?: string; upload?: string }>(
  async ({ visit, code, searchParams: { joint, upload } }) => {
    const { byKind } = visit.view.state.facts.records
    const pictures = await readPictures(visit.view.state.programme.id, 'joint')
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={inspectionsAddress(code)}
        place={[
          { text: 'Inspections', href: inspectionsAddress(code) },
          { text: 'Rework desk and sections' },
        ]}
        title="Rework desk and sections"
        supplement="Joints that wait for the iron or for another look; how often each was heated and what it cost; what joints show when cut open"
        cells={[
          { label: 'Visits of rework', value: byKind.get('rework')?.length ?? 0 },
          { label: 'Joints cut open', value: byKind.get('microsection')?.length ?? 0 },
        ]}
      >
        {(view) => (
          <>
            <InspectionPlaces code={view.code} at={reworkAddress(view.code)} />
            <Waiting
              view={view}
              pictures={pictures}
              joint={joint}
              refusedPicture={upload ? openUploadAnswer(upload, uploadSecret()).refused : undefined}
            />
            <HeatsAndCost view={view} />
            <Sections view={view} />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
