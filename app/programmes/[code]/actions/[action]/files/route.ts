import { actionAddress } from '@/app/addresses'
import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayInProgramme } from '@/app/guard/rights'
import { takeFile } from '@/app/forms/take-file'
import { perform } from '@/lib/commands/perform'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

/** Takes a file that belongs to an answer: streamed to the store, then named through the door. */
export const POST = guarded(mayInProgramme('attach-answer-file'), layFile)

function layFile({
  request,
  params: { action },
  person: { personId },
  right: { code, state },
}: LetIn<{ code: string; action: string }, ProgrammeView>): Promise<Response> {
  return takeFile({
    request,
    personId,
    trailId: state.programme.id,
    back: () => actionAddress(code, action),
    part: 'files',
    then: ({ sha256, fileName }, field) =>
      perform(
        personId,
        'attach-answer-file',
        { programme: code, action: Number(action), sha256, fileName, note: field('note') },
        { key: field('key') },
      ),
  })
}
