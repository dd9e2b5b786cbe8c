import { addressPart } from '@/app/address-part'
import { trainedPersonAddress } from '@/app/addresses'
import { takeFile } from '@/app/forms/take-file'
import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayAtTheWorks, nothingMore } from '@/app/guard/rights'
import { perform } from '@/lib/commands/perform'
import { peopleTrail } from '@/lib/queries/people-of-the-works'

/** Takes the certificate of a training: streamed to the store, then attached through the door. */
export const POST = guarded(mayAtTheWorks('attach-certificate', nothingMore), attach)

async function attach({
  request,
  params: { person, record },
  person: { personId },
}: LetIn<{ person: string; record: string }, undefined>): Promise<Response> {
  return takeFile({
    request,
    personId,
    trailId: await peopleTrail(),
    back: () => trainedPersonAddress(addressPart(person), record),
    part: 'certificates',
    then: ({ sha256, fileName }, field) =>
      perform(
        personId,
        'attach-certificate',
        { record, note: field('note'), sha256, fileName },
        { key: field('key') },
      ),
  })
}
