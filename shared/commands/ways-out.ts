import type { CommandName } from '@/shared/commands/all-faces'
import type { OpenPoint } from '@/shared/gate/item-status'

/** What can be in a gate's way: open points of its items, the gate before it, and signatures that are not given. */
export type BlockerKind = OpenPoint['kind'] | 'gate'

/** One way to be rid of a blocker: these commands, one after the other. */
export type WayOut = readonly CommandName[]

/**
 * For every kind of blocker the ways out of it, the ordinary one first. There is
 * one that does not depend on what can be mended: a finding that nothing mends is
 * conceded, an item that does not concern the board is not applicable.
 */
export const WAYS_OUT: Readonly<Record<BlockerKind, readonly [WayOut, ...WayOut[]]>> = {
  value: [['revise-parameter'], ['propose-set-aside', 'decide-set-aside']],
  finding: [
    ['revise-parameter'],
    ['add-record'],
    ['correct-lot'],
    ['request-concession', 'grant-concession', 'grant-concession'],
    ['request-deviation', 'grant-concession', 'grant-concession'],
  ],
  evidence: [['attach-evidence']],
  action: [['answer-action', 'accept-answer'], ['withdraw-action']],
  concession: [['grant-concession', 'grant-concession'], ['refuse-concession']],
  'not applicable': [['decide-set-aside'], ['restore-item']],
  approval: [['approve-item']],
  gate: [['sign-gate', 'sign-gate', 'sign-gate']],
}
