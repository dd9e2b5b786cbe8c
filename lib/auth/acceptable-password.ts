import { zxcvbn, zxcvbnOptions, type MatchExtended } from '@zxcvbn-ts/core'
import { adjacencyGraphs, dictionary } from '@zxcvbn-ts/language-common'
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from '@/lib/auth/password'

/**
 * Below this many guesses an attacker who knows what people choose is likely to find it. The estimate and its steps
 * are those of D. Wheeler, "zxcvbn: Low-Budget Password Strength Estimation", USENIX Security 2016: 10^8 is where
 * the estimate's score 3 of 4 begins.
 */
const FEWEST_GUESSES_LOG10 = 8

/**
 * A list of 49,000 passwords found in leaks, the words people make passwords of, and rows of keys. A password made
 * to have many signs for letters would hold the server up for ten seconds without these bounds.
 */
zxcvbnOptions.setOptions({ dictionary, graphs: adjacencyGraphs, maxLength: 32, l33tMaxSubstitutions: 4 })

/** Why a new password's length cannot be taken, as a sentence. */
export function lengthFault(password: string): string | undefined {
  if ([...password].length < SHORTEST_PASSWORD)
    return `The new password needs ${SHORTEST_PASSWORD} characters or more. Several words do well.`
  return password.length > LONGEST_PASSWORD
    ? `The new password has at most ${LONGEST_PASSWORD} characters.`
    : undefined
}

/**
 * Why a new password cannot be taken, as a sentence; undefined when it can. What makes a password good is its length
 * and that nobody would try it early, so no kinds of letters are asked for (NIST SP 800-63B, section 5.1.1.2).
 */
export function passwordFault(
  password: string,
  person: { readonly email: string; readonly name: string },
): string | undefined {
  const length = lengthFault(password)
  if (length) return length
  if (!/[\p{L}\p{N}\p{P}\p{S}]/u.test(password))
    return 'The new password is made of spaces. Choose several words that do not belong together.'
  const { guessesLog10, sequence } = zxcvbn(password.normalize('NFKC'), ownWords(person))
  return guessesLog10 < FEWEST_GUESSES_LOG10 ? easyBecause(sequence) : undefined
}

/** What somebody who wants in would try first: the address, the name and their parts, and this program's. */
const ownWords = ({ email, name }: { email: string; name: string }): string[] =>
  [email, name, ...email.split(/[@.+_-]/), ...name.split(/\s+/), 'Liquidus'].filter((word) => word.length > 2)

function easyBecause(sequence: readonly MatchExtended[]): string {
  const words = new Set(sequence.map((part) => ('dictionaryName' in part ? String(part.dictionaryName) : '')))
  const why = words.has('userInputs')
    ? 'is your own address or name, or little more'
    : words.has('passwords')
      ? 'is among the commonest passwords, or little more than one'
      : 'repeats itself or follows a row that others would try'
  return `The new password ${why}. Choose several words that do not belong together.`
}
