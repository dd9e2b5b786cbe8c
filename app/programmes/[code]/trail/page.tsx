import { trailAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Digest } from '@/app/ui/digest'
import { Section } from '@/app/ui/section'
import { readTrail, trailSearchFrom } from '@/lib/queries/trail'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { TakeTrail, TrailFound, TrailProof } from './trail-parts'

export const generateMetadata = programmeTitle(({ code }) => `Decision trail, ${code}`)

/** Who decided what, when and why; and the proof that it still says so. */
export default programmePage<object, Record<string, string | string[] | undefined>>(
  async ({ visit, code, searchParams: given }) => {
    const { id } = visit.view.state.programme
    const search = trailSearchFrom(given)
    const page = await readTrail(id, search)
    const verdict = given['verify'] ? await verdictOnStored(id) : undefined
    const at = trailAddress(code)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={at}
        place={[{ text: 'Trail' }]}
        title="Decision trail"
        supplement="Append-only; each entry carries the hash of the one before"
        cells={[
          { label: 'Entries', value: visit.view.head.seq },
          { label: 'Newest hash', value: <Digest value={visit.view.head.hash} length={24} />, wide: true },
        ]}
      >
        {() => (
          <>
            <Section
              heading="Proof"
              lead="Verifying shows an entry that was changed, left out, moved or cut off, and anything stored – approvals, signatures, readings, files – that is not what the entries say. A chain rewritten with all that it speaks of shows only against a newest hash kept elsewhere: on a print, in an export, or in the file the installation names."
              aside={<TakeTrail at={at} />}
            >
              <TrailProof at={at} verdict={verdict} />
            </Section>
            <Section
              heading={search.entry > 0 ? `Entry ${search.entry}` : 'Entries'}
              lead={`${page.found} found, newest first`}
              aside={search.entry > 0 && <a href={at}>All entries</a>}
            >
              <TrailFound at={at} search={search} page={page} code={code} />
            </Section>
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
