import { eachAtItsMoment } from '@/lib/db/row-reader'
import { gatesOf, trailEnd, trailEntries } from '@/lib/trail/stored-trail'
import { trailBundle } from '@/shared/trail/bundle'

/**
 * A trail as the text of a bundle, piece by piece. It ends where the trail ended when the reading
 * began: what is added meanwhile is in neither its entries nor its gates.
 */
export async function* bundleText(
  programme: { id: string; code: string; title: string },
  exportedAt: string,
): AsyncGenerator<string> {
  const { id, code, title } = programme
  const { seq } = await trailEnd(eachAtItsMoment, id)
  const gates = await gatesOf(eachAtItsMoment, id, seq)
  const shell = JSON.stringify(trailBundle({ exportedAt, programme: { code, title }, entries: [], gates }))
  const opening = '"entries":['
  const cut = shell.indexOf(opening) + opening.length
  yield shell.slice(0, cut)
  let first = true
  for await (const entries of trailEntries(eachAtItsMoment, id, seq)) {
    yield `${first ? '' : ','}\n${entries.map((entry) => JSON.stringify(entry)).join(',\n')}`
    first = false
  }
  yield shell.slice(cut)
}
