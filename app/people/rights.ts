import type { PersonRow } from '@/lib/queries/people'

/** What each right means, for the forms that give it. */
export const RIGHTS_CHOICES: readonly { value: PersonRow['rights']; text: string }[] = [
  { value: 'member', text: 'Member: takes part in the programmes they are invited to' },
  { value: 'auditor', text: 'Auditor: reads every programme, changes nothing' },
  { value: 'administrator', text: 'Administrator: keeps people and instruments, decides nothing' },
]
