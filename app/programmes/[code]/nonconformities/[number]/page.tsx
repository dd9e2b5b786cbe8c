import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { nonconformitiesAddress } from '@/app/addresses'
import { PictureForm } from '@/app/deliberation/picture-form'
import { PictureList } from '@/app/deliberation/picture-list'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { placeAddress } from '@/app/place-address'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { readNonconformity } from '@/lib/queries/nonconformities'
import { readPictures } from '@/lib/queries/pictures'
import { standingOf } from '@/shared/nonconformities/standing'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { placeOfSubject, subjectInWords } from '@/shared/reviews/subject-in-words'
import { placeInWords } from '../place-in-words'
import { RecordStep } from './record-step'
import { Steps } from './steps'

export const generateMetadata = programmeTitle<{ number: string }>(
  ({ code, number }) => `Nonconformity ${number}, ${code}`,
)

/** One nonconformity: what was found and where, pictures, and what was done about it. */
export default programmePage<{ number: string }, { upload?: string }>(
  async ({ visit, code, params: { number }, searchParams: { upload } }) => {
    const { state } = visit.view
    const one = /^\d{1,6}$/.test(number)
      ? await readNonconformity(state.programme.id, Number(number))
      : undefined
    if (!one) notFound()
    const pictures = (await readPictures(state.programme.id, 'nonconformity')).filter(
      ({ about }) => about.kind === 'nonconformity' && about.number === one.number,
    )
    const place = one.source && placeOfSubject(one.source)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={nonconformitiesAddress(code)}
        place={[
          { text: 'Nonconformities', href: nonconformitiesAddress(code) },
          { text: `Nonconformity ${number}` },
        ]}
        title={one.title}
        supplement={
          one.source && place ? (
            <>
              From <a href={placeAddress(code, place)}>{subjectInWords(one.source)}</a>
            </>
          ) : undefined
        }
        cells={[
          { label: 'Nonconformity', value: number },
          { label: 'Stands', value: standingOf(one.steps) },
          { label: 'Seen to by', value: DEPARTMENT_NAMES[one.owner] },
          { label: 'Where', value: placeInWords(one.place) || 'not said' },
          { label: 'Found', value: <Day at={one.foundOn} /> },
          { label: 'Opened by', value: one.openedBy },
        ]}
      >
        {(view) => (
          <>
            <p className="prose">{one.found}</p>
            <Steps view={view} nonconformity={one} />
            <RecordStep view={view} nonconformity={one} />
            <Section id="pictures" heading="Pictures">
              {pictures.length > 0 && <PictureList view={view} pictures={pictures} />}
              {!refusal('attach-picture', view.actor) && (
                <PictureForm
                  code={code}
                  formKey={randomUUID()}
                  about={{ about: 'nonconformity', number: one.number }}
                  label="Attach a picture"
                  refused={upload ? openUploadAnswer(upload, uploadSecret()).refused : undefined}
                />
              )}
            </Section>
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
