import { hexToBytes } from '@noble/hashes/utils.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/merkle.json'
import {
  consistencyProof,
  inclusionProof,
  leafHash,
  merkleRoot,
  nodeHash,
  trailLeaf,
  trailRoot,
  verifyConsistency,
  verifyInclusion,
} from '@/shared/trail/merkle'
import { sha256 } from '@/shared/trail/sha256'

const ascii = (text: string): Uint8Array => new TextEncoder().encode(text)
const leaves = reference.leaves.map((hex) => leafHash(hexToBytes(hex), sha256))
const rootOf = (size: number): string => merkleRoot(leaves.slice(0, size), sha256)
const pair = (key: string): [number, number] => key.split(',').map(Number) as [number, number]

describe('the test vectors of the RFC 6962 reference implementation (RFC 9162 hashes alike)', () => {
  test('leaf and node hashes', () => {
    expect(leafHash(ascii(''), sha256)).toBe(reference.hasher['leaf("")'])
    expect(leafHash(ascii('L123456'), sha256)).toBe(reference.hasher['leaf("L123456")'])
    // The vector's node children are short texts, so its hash is taken directly: it pins the 0x01 prefix.
    expect(sha256(Buffer.concat([Uint8Array.of(1), ascii('N123'), ascii('N456')]))).toBe(
      reference.hasher['node("N123","N456")'],
    )
  })

  test.each(reference.roots.map((root, size) => ({ root, size })))(
    'the root of $size leaves',
    ({ root, size }) => {
      expect(rootOf(size)).toBe(root)
    },
  )

  test.each(reference.inclusionRead)('the path of leaf $leaf_index in $tree_size', (row) => {
    expect(inclusionProof(row.leaf_index, leaves.slice(0, row.tree_size), sha256)).toEqual(row.proof)
    const claim = {
      index: row.leaf_index,
      size: row.tree_size,
      leafHash: row.leaf_hash,
      root: row.root,
      proof: row.proof,
    }
    expect(verifyInclusion(claim, sha256)).toBe(true)
  })

  test.each(reference.consistencyRead)('consistency of $size1 with $size2', (row) => {
    expect(consistencyProof(row.size1, leaves.slice(0, row.size2), sha256)).toEqual(row.proof)
    const claim = {
      firstSize: row.size1,
      secondSize: row.size2,
      firstRoot: row.root1,
      secondRoot: row.root2,
      proof: row.proof,
    }
    expect(verifyConsistency(claim, sha256)).toBe(true)
  })

  test.each(Object.entries(reference.inclusionAll))('every path: leaf, size = %s', (key, proof) => {
    const [index, size] = pair(key)
    expect(inclusionProof(index, leaves.slice(0, size), sha256)).toEqual(proof)
    expect(
      verifyInclusion({ index, size, leafHash: leaves[index]!, root: rootOf(size), proof }, sha256),
    ).toBe(true)
  })

  test.each(Object.entries(reference.consistencyAll))('every consistency proof: sizes %s', (key, proof) => {
    const [firstSize, secondSize] = pair(key)
    expect(consistencyProof(firstSize, leaves.slice(0, secondSize), sha256)).toEqual(proof)
    const claim = {
      firstSize,
      secondSize,
      firstRoot: rootOf(firstSize),
      secondRoot: rootOf(secondSize),
      proof,
    }
    expect(verifyConsistency(claim, sha256)).toBe(true)
  })
})

const flipped = (hash: string): string => (hash[0] === '0' ? '1' : '0') + hash.slice(1)

describe('what a verifier must refuse', () => {
  const claim = {
    index: 5,
    size: 8,
    leafHash: leaves[5]!,
    root: rootOf(8),
    proof: inclusionProof(5, leaves, sha256),
  }
  test.each([
    ['a changed step', { ...claim, proof: claim.proof.with(1, flipped(claim.proof[1]!)) }],
    ['a step too many, behind', { ...claim, proof: [...claim.proof, claim.root] }],
    ['a step too many, in front', { ...claim, proof: [claim.leafHash, ...claim.proof] }],
    ['a step too few, behind', { ...claim, proof: claim.proof.slice(0, -1) }],
    ['a step too few, in front', { ...claim, proof: claim.proof.slice(1) }],
    ['no steps', { ...claim, proof: [] }],
    ['the neighbouring index', { ...claim, index: 4 }],
    ['an index beyond the size', { ...claim, index: 8 }],
    ['a negative index', { ...claim, index: -1 }],
    ['twice the size', { ...claim, size: 16 }],
    ['half the size', { ...claim, size: 4 }],
    ['size nought', { ...claim, size: 0, index: 0 }],
    ['another root', { ...claim, root: rootOf(7) }],
    ['a step that is no hash', { ...claim, proof: claim.proof.with(0, 'zz') }],
  ])('inclusion: %s', (_, changed) => {
    expect(verifyInclusion(changed, sha256)).toBe(false)
  })

  test('inclusion: two hashes put together as the data of a leaf (second preimage)', () => {
    const forged = leafHash(hexToBytes(leaves[4]! + leaves[5]!), sha256)
    const higher = { index: 2, size: 4, root: claim.root, proof: claim.proof.slice(1) }
    expect(verifyInclusion({ ...higher, leafHash: nodeHash(leaves[4]!, leaves[5]!, sha256) }, sha256)).toBe(
      true,
    )
    expect(verifyInclusion({ ...higher, leafHash: forged }, sha256)).toBe(false)
  })

  const consistency = {
    firstSize: 6,
    secondSize: 8,
    firstRoot: rootOf(6),
    secondRoot: rootOf(8),
    proof: consistencyProof(6, leaves, sha256),
  }
  test.each([
    ['a changed step', { ...consistency, proof: consistency.proof.with(0, flipped(consistency.proof[0]!)) }],
    ['the first root in front', { ...consistency, proof: [consistency.firstRoot, ...consistency.proof] }],
    ['the second root in front', { ...consistency, proof: [consistency.secondRoot, ...consistency.proof] }],
    ['a step too many', { ...consistency, proof: [...consistency.proof, consistency.secondRoot] }],
    ['a step too few', { ...consistency, proof: consistency.proof.slice(0, -1) }],
    ['no steps', { ...consistency, proof: [] }],
    ['one size more', { ...consistency, firstSize: 7 }],
    ['one size less', { ...consistency, firstSize: 5 }],
    ['the sizes swapped', { ...consistency, firstSize: 8, secondSize: 6 }],
    ['an empty first tree', { ...consistency, firstSize: 0, firstRoot: rootOf(0), proof: [] }],
    [
      'the roots swapped',
      { ...consistency, firstRoot: consistency.secondRoot, secondRoot: consistency.firstRoot },
    ],
    ['equal sizes with a proof', { ...consistency, firstSize: 8, firstRoot: rootOf(8) }],
    ['equal sizes with unlike roots', { ...consistency, firstSize: 8, proof: [] }],
  ])('consistency: %s', (_, changed) => {
    expect(verifyConsistency(changed, sha256)).toBe(false)
  })

  test('a proof for a leaf or a tree that is not there', () => {
    expect(() => inclusionProof(8, leaves, sha256)).toThrow(RangeError)
    expect(() => inclusionProof(-1, leaves, sha256)).toThrow(RangeError)
    expect(() => consistencyProof(0, leaves, sha256)).toThrow(RangeError)
    expect(() => consistencyProof(9, leaves, sha256)).toThrow(RangeError)
  })
})

test('every proof of every tree holds, and shows nothing about another leaf or tree', () => {
  const hashesOf = (count: number): string[] =>
    Array.from({ length: count }, (_, at) => sha256(`entry ${at}`))
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 70 }), fc.nat(), fc.nat(), (size, pickLeaf, pickSize) => {
      const hashes = hashesOf(size)
      const tree = hashes.map((hash) => trailLeaf(hash, sha256))
      const root = trailRoot(hashes, sha256)
      const index = pickLeaf % size
      const proof = inclusionProof(index, tree, sha256)
      expect(verifyInclusion({ index, size, leafHash: tree[index]!, root, proof }, sha256)).toBe(true)
      const other = trailLeaf(sha256('another entry'), sha256)
      expect(verifyInclusion({ index, size, leafHash: other, root, proof }, sha256)).toBe(false)

      const firstSize = 1 + (pickSize % size)
      const firstRoot = trailRoot(hashes.slice(0, firstSize), sha256)
      const claim = {
        firstSize,
        secondSize: size,
        firstRoot,
        secondRoot: root,
        proof: consistencyProof(firstSize, tree, sha256),
      }
      expect(verifyConsistency(claim, sha256)).toBe(true)
      expect(verifyConsistency({ ...claim, firstRoot: other }, sha256)).toBe(false)
    }),
  )
})
