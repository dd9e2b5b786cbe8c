import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/item-status'
import { SignedContent } from './signed-content'

/** What a signature on the item covers as it stands today, to be read before it is given. */
export const Covered = ({ view, state }: { view: ProgrammeView; state: ItemState }) => (
  // What was signed is printed with each signature's why; here it would be sheets of what stands above.
  <div className="print-hidden">
    <Section
      id="covered"
      heading="What an approval covers today"
      fold="shut"
      lead="An approval covers the item as it stands and lapses by itself when anything it covers changes."
    >
      <SignedContent view={view} signedContent={state.signedContent} digest={state.digest} />
    </Section>
  </div>
)
