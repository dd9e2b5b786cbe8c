import { eachAtItsMoment } from '@/lib/db/row-reader'
import { gatesOf, trailEnd, trailEntries } from '@/lib/trail/stored-trail'
import { trailBundle } from '@/shared/trail/bundle'
import { worksHeadsIn, type WorksHead } from '@/shared/trail/works-head'

/**
 * A trail as the text of a bundle, piece by piece, with the trails of the works that its gates rest on. It ends where the
 * trail ended when the reading began: what is added meanwhile is in neither its entries nor its gates.
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
  const heads = new Map<string, WorksHead>()
  yield* entriesText(id, seq, heads)
  if (heads.size === 0) {
    yield shell.slice(cut)
    return
  }
  yield `${shell.slice(cut, -1)},"works":[`
  let first = true
  for (const { trailId, kind, code: name, seq: upTo } of heads.values()) {
    const start = JSON.stringify({ kind, code: name, entries: [] })
    yield `${first ? '' : ','}\n${start.slice(0, -2)}`
    yield* entriesText(trailId, upTo, new Map())
    yield ']}'
    first = false
  }
  yield ']}'
}

/** A trail's entries with commas between; notes the newest head that they name of each trail of the works. */
async function* entriesText(
  trailId: string,
  upTo: number,
  heads: Map<string, WorksHead>,
): AsyncGenerator<string> {
  let first = true
  for await (const entries of trailEntries(eachAtItsMoment, trailId, upTo)) {
    for (const head of entries.flatMap(worksHeadsIn))
      if ((heads.get(head.trailId)?.seq ?? 0) < head.seq) heads.set(head.trailId, head)
    yield `${first ? '' : ','}\n${entries.map((entry) => JSON.stringify(entry)).join(',\n')}`
    first = false
  }
}
