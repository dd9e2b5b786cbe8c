import { itemAddress } from '@/app/addresses'
import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayInProgramme } from '@/app/guard/rights'
import { takeFile } from '@/app/forms/take-file'
import { perform } from '@/lib/commands/perform'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

/** Takes a file for an item: streamed to the store, then attached through the door. */
export const POST = guarded(mayInProgramme('attach-evidence'), attachFile)

function attachFile({
  request,
  params: { item },
  person: { personId },
  right: { code, state },
}: LetIn<{ code: string; item: string }, ProgrammeView>): Promise<Response> {
  return takeFile({
    request,
    personId,
    trailId: state.programme.id,
    back: () => itemAddress(code, item),
    part: 'evidence',
    then: ({ sha256, fileName }, field) =>
      perform(
        personId,
        'attach-evidence',
        {
          programme: code,
          item,
          kind: field('kind'),
          note: field('note'),
          what: { sha256, fileName },
        },
        { key: field('key') },
      ),
  })
}
