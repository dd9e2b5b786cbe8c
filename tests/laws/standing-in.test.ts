import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { standingIn } from '@/lib/programme/stand-ins'
import type { Actor } from '@/shared/actor'
import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import { gateFor, judgeProgramme } from '@/shared/gate/judgement'
import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import { STAGES } from '@/shared/plan/stage'
import { partRefusal, refusal } from '@/shared/policy'
import { signedUpTo } from '@/tests/rules/gate/small-programme'

/*
 * Who stands in for an absent person may do exactly what that person may by their departments, and neither what the
 * absent one could not decide because of their own deeds, nor what they could not because of theirs: where two
 * different people are asked, nobody gives both signatures. Separation of duties as in ISO/IEC 27002:2022, 5.3 (from
 * memory). That a delegation is in force from its first day to its last is tried at the door, in
 * tests/commands/stand-in.test.ts.
 */

const outsider: Actor = {
  personId: 'delegate',
  name: 'The delegate',
  departments: [],
  leads: false,
  auditor: false,
  administrator: false,
}
const absentOf = (departments: readonly Department[]): Actor => ({
  ...outsider,
  personId: 'absent',
  name: 'Who is away',
  departments,
})
const standInOf = (departments: readonly Department[]): Actor =>
  standingIn(outsider, {
    departments,
    standsInFor: [{ personId: 'absent', name: 'Who is away', until: '2026-03-31' }],
  })

const someDepartments = fc.subarray([...DEPARTMENTS], { minLength: 1 })
const someDepartment = fc.constantFrom(...DEPARTMENTS)
/** Whose deed something was: the absent one's, the delegate's, or that of two others. */
const somebody = fc.constantFrom('absent', 'delegate', 'another', 'one more')

/** What both could decide for themselves: the delegate's own deeds count as much as those of the absent. */
const bothMay = (departments: readonly Department[], asked: (actor: Actor) => string | undefined): boolean =>
  asked(absentOf(departments)) === undefined &&
  asked({ ...absentOf(departments), personId: 'delegate' }) === undefined

const holdsFor = (departments: readonly Department[], asked: (actor: Actor) => string | undefined): void => {
  expect(asked(standInOf(departments)) === undefined).toBe(bothMay(departments, asked))
}

test.each(COMMAND_NAMES.filter((name) => faceOf(name).may.scope === 'programme'))(
  '%s is open to a delegate’s part exactly when it is to the part of who is away',
  (command) => {
    fc.assert(
      fc.property(someDepartments, (departments) => {
        expect(partRefusal(command, standInOf(departments)) === undefined).toBe(
          partRefusal(command, absentOf(departments)) === undefined,
        )
      }),
    )
  },
)

test('without a delegation in force there is no part at all', () => {
  for (const command of COMMAND_NAMES.filter((name) => {
    const { may } = faceOf(name)
    return may.scope === 'programme' && !may.anyone
  }))
    expect(partRefusal(command, standingIn(outsider, undefined)), command).toBeDefined()
})

describe('where different people are asked', () => {
  test('a gate: one signature a person, whoever signs for whom', () => {
    fc.assert(
      fc.property(
        someDepartments,
        someDepartment,
        fc.constantFrom(...STAGES),
        fc.record({ design: somebody, production: somebody }),
        fc.integer({ min: 0, max: 3 }),
        (departments, department, stage, signers, signed) => {
          const whole = signedUpTo(stage)
          const given = whole.gateSignatures.filter((one) => one.stage === stage).slice(0, signed)
          const state = {
            ...whole,
            gateSignatures: [
              ...whole.gateSignatures.filter((one) => one.stage !== stage),
              ...given.map((one) => ({
                ...one,
                personId: one.department === 'quality' ? 'another' : signers[one.department],
              })),
            ],
          }
          const judgement = judgeProgramme(state)
          const gate = gateFor(judgement, stage)!
          holdsFor(departments, (actor) =>
            refusal('sign-gate', actor, { department, gate, items: judgement.items, concessions: [] }),
          )
        },
      ),
    )
  })

  test('an item: the second department’s approval comes from somebody else', () => {
    fc.assert(
      fc.property(someDepartments, someDepartment, somebody, (departments, department, signer) => {
        const whole = signedUpTo('specification')
        const state = {
          ...whole,
          approvals: whole.approvals
            .filter((one) => one.itemKey !== 'finish' || one.department === 'design')
            .map((one) => ({ ...one, personId: signer })),
        }
        const item = judgeProgramme(state).items.find((one) => one.item.definition.key === 'finish')!
        holdsFor(departments, (actor) => refusal('approve-item', actor, { department, item, state }))
      }),
    )
  })

  test('an answer, a proposal, a correction: nobody decides on their own', () => {
    fc.assert(
      fc.property(someDepartments, someDepartment, somebody, (departments, from, byId) => {
        holdsFor(departments, (actor) => refusal('accept-answer', actor, { from, answeredById: byId }))
        holdsFor(departments, (actor) => refusal('return-answer', actor, { from, answeredById: byId }))
        holdsFor(departments, (actor) => refusal('decide-set-aside', actor, { proposedById: byId }))
        holdsFor(departments, (actor) =>
          refusal('record-step', actor, { number: 1, owner: from, kind: 'check', correctedById: byId }),
        )
      }),
    )
  })
})
