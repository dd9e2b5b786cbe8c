import { randomBytes, scryptSync } from 'node:crypto'

/** As the server stores a password, at a cost that tests can pay a thousand times; whose cost matters, hash as the server does. */
export function quickHash(password: string): string {
  const [cost, blockSize, parallel] = [2 ** 4, 8, 1]
  const salt = randomBytes(16)
  const hash = scryptSync(password, salt, 32, { N: cost, r: blockSize, p: parallel })
  return ['scrypt', cost, blockSize, parallel, salt.toString('base64'), hash.toString('base64')].join('$')
}
