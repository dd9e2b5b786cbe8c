import type { TrailLink } from './link-breaks'
import { trailRoot } from './merkle'
import type { Sha256 } from './sha256'
import type { TrailBreak } from './trail-break'

/**
 * A statement about a trail made at some time and kept elsewhere: a gate's signature,
 * or a hash read from a printed page. Only a seal can show that a trail's end was cut
 * off, or that the whole chain was rewritten by someone able to write the table.
 */
export type TrailSeal = {
  /** As the reader knows it, such as `the specification gate`. */
  readonly name: string
  /** The newest entry then. */
  readonly seq: number
  /** That entry's hash. */
  readonly headHash: string
  /** The Merkle root over the hashes of entries 1 to `seq`, where the seal holds one. */
  readonly merkleRoot?: string
}

/** The seals that the trail's entries no longer agree with. */
export function sealBreaks(
  links: readonly TrailLink[],
  seals: readonly TrailSeal[],
  sha256: Sha256,
): TrailBreak[] {
  if (seals.length === 0) return []
  const inOrder = [...links].sort((one, other) => one.seq - other.seq)
  const newest = inOrder.at(-1)?.seq ?? 0
  return seals.flatMap((seal): TrailBreak[] => {
    if (seal.seq > newest)
      return [{ kind: 'cut-off', seq: newest + 1, sentence: cutOffSentence(seal, newest) }]
    return agrees(inOrder, seal, sha256)
      ? []
      : [
          {
            kind: 'resealed',
            seq: seal.seq,
            sentence: `Entries 1 to ${seal.seq} are not those that ${seal.name} covered; the record was rewritten.`,
          },
        ]
  })
}

function agrees(inOrder: readonly TrailLink[], seal: TrailSeal, sha256: Sha256): boolean {
  const covered = inOrder.filter(({ seq }) => seq <= seal.seq)
  if (covered.at(-1)?.seq !== seal.seq || covered.at(-1)?.hash !== seal.headHash) return false
  if (seal.merkleRoot === undefined) return true
  const hashes = covered.map(({ hash }) => hash)
  return hashes.every(isHash) && trailRoot(hashes, sha256) === seal.merkleRoot
}

const isHash = (text: string): boolean => /^[0-9a-f]{64}$/.test(text)

const cutOffSentence = (seal: TrailSeal, newest: number): string =>
  newest === 0
    ? `All entries are gone: ${seal.name} covered ${seal.seq}.`
    : `The end is cut off: ${seal.name} covered ${seal.seq} entries, but the trail ends with entry ${newest}.`
