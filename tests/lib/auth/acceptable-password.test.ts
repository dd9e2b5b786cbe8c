import { describe, expect, test } from 'vitest'
import { passwordFault } from '@/lib/auth/acceptable-password'

const INES = { email: 'ines@demo.invalid', name: 'Ines Okafor' }
const fault = (password: string) => passwordFault(password, INES)

// NIST SP 800-63B, section 5.1.1.2: refuse passwords of earlier leaks, dictionary words, repetitive or sequential
// characters and words of the context, such as the service or the person's own name.
describe('a password that would be tried early is refused, and why is said', () => {
  test.each([
    // Found in leaks: the list of the SecLists project, as the estimator's package carries it.
    ['123456789012', /commonest/],
    ['qwertyuiop123', /commonest/],
    ['1q2w3e4r5t6y', /commonest/],
    ['Password1234', /commonest/],
    ['p@ssw0rd1234', /commonest/],
    ['iloveyou12345', /commonest/],
    ['passwordpassword', /repeats itself/],
    ['aaaaaaaaaaaaaa', /repeats itself/],
    ['abcabcabcabc', /repeats itself/],
    ['abcdefghijklmn', /repeats itself/],
    ['ines@demo.invalid', /own address or name/],
    ['INES@demo.invalid1', /own address or name/],
    ['Ines Okafor 1', /own address or name/],
    ['liquidus 2026', /own address or name/],
  ])('%s', (password, why) => expect(fault(password)).toMatch(why))

  test.each(['            ', '\t \u00a0\u2003         ', '\u200b'.repeat(12)])(
    'one of nothing to be seen: %j',
    (password) => expect(fault(password)).toContain('made of spaces'),
  )

  test('one that is too short, counted as people count letters', () => {
    expect(fault('kiln road 9')).toContain('12 characters')
    expect(fault('🔧🔩⚙🧲🪛🔨🪚🗜🧰📐✂')).toContain('12 characters')
  })
})

// "correct horse battery staple" is the example of the estimator's paper.
test.each([
  'correct horse battery staple',
  'kiln copper road nine',
  'four-gates-to-service',
  'Zinn läuft, Flußmittel',
])('one of several words is taken: %s', (password) => expect(fault(password)).toBeUndefined())

test('it is decided soon, however long and mixed it is: unbounded, this one takes ten seconds', () => {
  const began = performance.now()
  passwordFault('p@55w0rd$1l0v3y0u!'.repeat(12).slice(0, 200), INES)
  expect(performance.now() - began).toBeLessThan(3000)
})
