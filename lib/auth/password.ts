import { randomBytes, randomInt, scrypt, timingSafeEqual } from 'node:crypto'
import { inHashLine, type Turn } from '@/lib/auth/hash-line'

/**
 * scrypt at the parameters the OWASP password storage cheat sheet recommends:
 * N = 2^17, r = 8, p = 1. Stored as `scrypt$N$r$p$salt$hash`, so that stronger
 * parameters can follow without ending anybody's password.
 */
const COST = 2 ** 17
const BLOCK_SIZE = 8
const PARALLEL = 1
const HASH_BYTES = 32

export const SHORTEST_PASSWORD = 12
export const LONGEST_PASSWORD = 200

/** Waits its turn in the line of hashes, as somebody signed in; throws `LineIsFull` when there is no place. */
export async function hashPassword(password: string): Promise<string> {
  const salt = randomBytes(16)
  const hash = await inHashLine({ who: 'signed in' }, (turn) =>
    derive(turn, password, salt, COST, BLOCK_SIZE, PARALLEL),
  )
  return ['scrypt', COST, BLOCK_SIZE, PARALLEL, salt.toString('base64'), hash.toString('base64')].join('$')
}

/**
 * A hash of nothing, for somebody who is not there or has no password: looking takes as long as at a wrong password.
 * The salt is no secret, and no password has the hash of 32 zeros.
 */
export const NOBODYS_HASH = [
  'scrypt',
  COST,
  BLOCK_SIZE,
  PARALLEL,
  Buffer.alloc(16).toString('base64'),
  Buffer.alloc(HASH_BYTES).toString('base64'),
].join('$')

/** False for a wrong password and for a hash that cannot be read. */
export async function passwordMatches(turn: Turn, password: string, stored: string): Promise<boolean> {
  const [scheme, cost, blockSize, parallel, salt, hash] = stored.split('$')
  if (scheme !== 'scrypt' || !salt || !hash) return false
  const expected = Buffer.from(hash, 'base64')
  const derived = await derive(
    turn,
    password,
    Buffer.from(salt, 'base64'),
    Number(cost),
    Number(blockSize),
    Number(parallel),
  )
  return expected.length === derived.length && timingSafeEqual(expected, derived)
}

/** A password to be used once: no letters that read alike, 80 bits and more. */
export function oneTimePassword(): string {
  const letters = 'abcdefghjkmnpqrstuvwxyz23456789'
  return Array.from({ length: 4 }, () =>
    Array.from({ length: 5 }, () => letters[randomInt(letters.length)]).join(''),
  ).join('-')
}

/** Passwords are compared as people type them: compatibility forms of a letter are one letter. */
const derive = (
  _turn: Turn,
  password: string,
  salt: Buffer,
  cost: number,
  blockSize: number,
  parallel: number,
): Promise<Buffer> =>
  new Promise((resolve, reject) =>
    scrypt(
      password.normalize('NFKC'),
      salt,
      HASH_BYTES,
      { N: cost, r: blockSize, p: parallel, maxmem: 256 * cost * blockSize },
      (error, key) => (error ? reject(error) : resolve(key)),
    ),
  )
