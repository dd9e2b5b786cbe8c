import { addressPart } from '@/app/address-part'
import { partAddress } from '@/app/addresses'
import { guarded, type LetIn } from '@/app/guard/guarded'
import { mayAtTheWorks, type Rights } from '@/app/guard/rights'
import { takeFile } from '@/app/forms/take-file'
import { perform } from '@/lib/commands/perform'
import { readPart, type PartRead } from '@/lib/queries/works/parts'

interface Params {
  readonly part: string
}

const findsPart: Rights<Params, PartRead> = async (_person, params) => {
  const part = await readPart(addressPart(params.part))
  return part ? { right: part } : { status: 404, message: 'The works have no such part.' }
}

/** A part, for those who may attach to it. */
const mayAttach = mayAtTheWorks('attach-drawing', findsPart)

/** Takes a drawing of a part: streamed to the store, then attached through the door. */
export const POST = guarded(mayAttach, ({ request, person: { personId }, right }: LetIn<Params, PartRead>) =>
  takeFile({
    request,
    personId,
    trailId: right.id,
    back: () => partAddress(right.code),
    part: 'drawings',
    then: ({ sha256, fileName }, field) =>
      perform(
        personId,
        'attach-drawing',
        { part: right.code, note: field('note'), sha256, fileName },
        { key: field('key') },
      ),
  }),
)
