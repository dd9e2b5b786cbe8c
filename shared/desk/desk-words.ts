import type { DeskVerb } from './desk-entry'

/** What a line asks of whose desk it is on. */
export const TO_DO: Readonly<Record<DeskVerb, string>> = {
  answer: 'Answer an action',
  accept: 'Accept or return an answer',
  'find the cause': 'Answer chart signal',
  approve: 'Approve',
  'approve again': 'Approve again: it changed',
  sign: 'Sign gate',
  decide: 'Decide',
  specify: 'Specify',
  mend: 'Mend: it fails',
  show: 'Record what shows it',
  attach: 'Attach',
  test: 'Test the lot',
  dispose: 'Decide on the lot',
  check: 'Check and log',
  rework: 'Rework',
  'inspect again': 'Inspect again after rework',
  contain: 'Contain it, find the cause',
  correct: 'Correct it',
  'check that it helped': 'Check that it helped',
  reply: 'Reply to a comment, or resolve it',
  calibrate: 'Have it calibrated',
  'solder or test again': 'Solder by then, or test again',
  renew: 'Mend it, or ask again',
}

/** The same, as somebody else owes it. */
export const AWAITED: Readonly<Record<DeskVerb, string>> = {
  ...TO_DO,
  answer: 'an answer',
  accept: 'to accept an answer',
  approve: 'approval',
  'approve again': 'approval',
  sign: 'a signature',
  decide: 'a decision',
}
