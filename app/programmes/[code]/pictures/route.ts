import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayInProgramme } from '@/app/guard/rights'
import { placeAddress } from '@/app/place-address'
import { takeFile } from '@/app/forms/take-file'
import { perform } from '@/lib/commands/perform'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { placeOfPictured, type Pictured } from '@/shared/reviews/pictured'

/** Takes a picture of a joint or a nonconformity: streamed to the store, then attached through the door. */
export const POST = guarded(mayInProgramme('attach-picture'), attachPicture)

function attachPicture({
  request,
  person: { personId },
  right: { code, state },
}: LetIn<{ code: string }, ProgrammeView>): Promise<Response> {
  return takeFile({
    request,
    personId,
    trailId: state.programme.id,
    back: (field) => placeAddress(code, placeOfPictured(picturedIn(field))),
    part: 'pictures',
    then: ({ sha256, fileName }, field) =>
      perform(
        personId,
        'attach-picture',
        { programme: code, about: picturedIn(field), note: field('note'), sha256, fileName },
        { key: field('key') },
      ),
  })
}

const picturedIn = (field: (name: string) => string): Pictured =>
  field('about') === 'joint'
    ? { kind: 'joint', assembly: field('assembly'), joint: field('joint') }
    : { kind: 'nonconformity', number: Number(field('number')) }
