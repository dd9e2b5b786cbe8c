import { hexToBytes } from '@noble/hashes/utils.js'
import type { Sha256 } from './sha256'

/*
 * Merkle trees as in RFC 9162 section 2.1. Hashes are 64 hexadecimal digits.
 * The tree of n leaves splits at the largest power of two below n; joining
 * neighbours level by level and carrying an odd last one up gives the same tree.
 */

/** The hash of a leaf: SHA-256 of 0x00 and the data. RFC 9162 section 2.1.1. */
export function leafHash(data: Uint8Array, sha256: Sha256): string {
  const bytes = new Uint8Array(data.length + 1)
  bytes.set(data, 1)
  return sha256(bytes)
}

/** The hash of an inner node: SHA-256 of 0x01, the left hash and the right hash. */
export function nodeHash(left: string, right: string, sha256: Sha256): string {
  const bytes = new Uint8Array(65)
  bytes[0] = 1
  bytes.set(hexToBytes(left), 1)
  bytes.set(hexToBytes(right), 33)
  return sha256(bytes)
}

/** The root over leaf hashes; the empty tree's root is the SHA-256 of nothing. */
export function merkleRoot(leafHashes: readonly string[], sha256: Sha256): string {
  let level = leafHashes
  while (level.length > 1) level = levelAbove(level, sha256)
  return level[0] ?? sha256(new Uint8Array(0))
}

/** The root over a trail's first entries: each leaf's data is the 32 bytes of an entry's hash. */
export const trailRoot = (entryHashes: readonly string[], sha256: Sha256): string =>
  merkleRoot(
    entryHashes.map((hash) => leafHash(hexToBytes(hash), sha256)),
    sha256,
  )

/** The leaf hash of one trail entry, to be shown included under a root. */
export const trailLeaf = (entryHash: string, sha256: Sha256): string =>
  leafHash(hexToBytes(entryHash), sha256)

/**
 * The hashes that lead from leaf `index` (from 0) to the root, leaf first. RFC 9162 section 2.1.3.1.
 * RangeError when there is no such leaf.
 */
export function inclusionProof(index: number, leafHashes: readonly string[], sha256: Sha256): string[] {
  if (!Number.isInteger(index) || index < 0 || index >= leafHashes.length) {
    throw new RangeError(`There is no leaf ${index} in a tree of ${leafHashes.length}.`)
  }
  const proof: string[] = []
  let position = index
  for (let level = leafHashes; level.length > 1; level = levelAbove(level, sha256)) {
    const sibling = level[position ^ 1]
    if (sibling !== undefined) proof.push(sibling)
    position >>= 1
  }
  return proof
}

/**
 * The hashes that show the tree of the first `size` leaves to be the start of the whole. RFC 9162
 * section 2.1.4.1. Empty when both are the same tree. RangeError unless 1 ≤ size ≤ all.
 */
export function consistencyProof(size: number, leafHashes: readonly string[], sha256: Sha256): string[] {
  if (!Number.isInteger(size) || size < 1 || size > leafHashes.length) {
    throw new RangeError(`A tree of ${leafHashes.length} leaves has no earlier tree of ${size}.`)
  }
  return subproof(size, leafHashes, true, sha256)
}

function subproof(size: number, leaves: readonly string[], known: boolean, sha256: Sha256): string[] {
  if (size === leaves.length) return known ? [] : [merkleRoot(leaves, sha256)]
  const split = 2 ** Math.ceil(Math.log2(leaves.length) - 1)
  const [left, right] = [leaves.slice(0, split), leaves.slice(split)]
  return size <= split
    ? [...subproof(size, left, known, sha256), merkleRoot(right, sha256)]
    : [...subproof(size - split, right, false, sha256), merkleRoot(left, sha256)]
}

function levelAbove(level: readonly string[], sha256: Sha256): string[] {
  const above: string[] = []
  for (let index = 0; index < level.length; index += 2) {
    const left = level[index]!
    const right = level[index + 1]
    above.push(right === undefined ? left : nodeHash(left, right, sha256))
  }
  return above
}

export type InclusionClaim = {
  readonly index: number
  readonly size: number
  readonly leafHash: string
  readonly root: string
  readonly proof: readonly string[]
}

/** Whether the proof shows the leaf at `index` in the tree of `size` with that root. RFC 9162 section 2.1.3.2. */
export function verifyInclusion(claim: InclusionClaim, sha256: Sha256): boolean {
  const { index, size, root, proof } = claim
  if (!isCount(size) || !isCount(index) || index >= size || !areHashes([claim.leafHash, root, ...proof]))
    return false
  let position = index
  let last = size - 1
  let hash = claim.leafHash
  for (const step of proof) {
    if (last === 0) return false
    if (position % 2 === 1 || position === last) {
      hash = nodeHash(step, hash, sha256)
      while (position % 2 === 0 && position !== 0) [position, last] = [half(position), half(last)]
    } else {
      hash = nodeHash(hash, step, sha256)
    }
    ;[position, last] = [half(position), half(last)]
  }
  return last === 0 && hash === root
}

export type ConsistencyClaim = {
  readonly firstSize: number
  readonly secondSize: number
  readonly firstRoot: string
  readonly secondRoot: string
  readonly proof: readonly string[]
}

/**
 * Whether the proof shows the first tree to be the start of the second. RFC 9162 section 2.1.4.2.
 * Nothing is shown about an empty first tree, so that claim is refused.
 */
export function verifyConsistency(claim: ConsistencyClaim, sha256: Sha256): boolean {
  const { firstSize, secondSize, firstRoot, secondRoot, proof } = claim
  if (!isCount(firstSize) || !isCount(secondSize) || firstSize < 1 || firstSize > secondSize) return false
  if (!areHashes([firstRoot, secondRoot, ...proof])) return false
  if (firstSize === secondSize) return proof.length === 0 && firstRoot === secondRoot
  if (proof.length === 0) return false

  // A first tree that is a whole subtree is its own first step; the proof then leaves it out.
  const path = isPowerOfTwo(firstSize) ? [firstRoot, ...proof] : [...proof]
  let position = firstSize - 1
  let last = secondSize - 1
  while (position % 2 === 1) [position, last] = [half(position), half(last)]

  let first = path[0]!
  let second = path[0]!
  for (const step of path.slice(1)) {
    if (last === 0) return false
    if (position % 2 === 1 || position === last) {
      first = nodeHash(step, first, sha256)
      second = nodeHash(step, second, sha256)
      while (position % 2 === 0 && position !== 0) [position, last] = [half(position), half(last)]
    } else {
      second = nodeHash(second, step, sha256)
    }
    ;[position, last] = [half(position), half(last)]
  }
  return last === 0 && first === firstRoot && second === secondRoot
}

const HASH = /^[0-9a-f]{64}$/
const areHashes = (hashes: readonly string[]): boolean => hashes.every((hash) => HASH.test(hash))
const isCount = (count: number): boolean => Number.isSafeInteger(count) && count >= 0
const isPowerOfTwo = (count: number): boolean => Number.isInteger(Math.log2(count))
const half = (count: number): number => Math.floor(count / 2)
