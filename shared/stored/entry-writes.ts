import { ownMember } from '@/shared/own-member'
import type { CommandName } from '@/shared/commands/all-faces'
import type { Writes } from './spoken-entry'
import { CHANGE_WRITES } from './writes/change-writes'
import { COMPANY_RULE_WRITES } from './writes/company-rule-writes'
import { DECISION_WRITES } from './writes/decision-writes'
import { DELIBERATION_WRITES } from './writes/deliberation-writes'
import { DESK_WRITES } from './writes/desk-writes'
import { INSTALLATION_WRITES } from './writes/installation-writes'
import { PART_WRITES } from './writes/part-writes'
import { PROGRAMME_WRITES } from './writes/programme-writes'
import { RECORD_WRITES } from './writes/record-writes'
import { SPECIFICATION_WRITES } from './writes/specification-writes'
import { STUDY_WRITES } from './writes/study-writes'
import { WORKS_WRITES } from './writes/works-writes'

/** Entries that are written beside the door, where nobody could have been authorised or nobody decided. */
type BesideTheDoor =
  | 'first-administrator'
  | 'renew-first-administrator'
  | 'bind-identity'
  | 'carry-concessions'
  | 'carry-to-works'

/** For every command: what its entry says was written, in this version and in those before it. */
const ENTRY_WRITES: Readonly<Record<CommandName | BesideTheDoor, Writes>> = {
  ...PROGRAMME_WRITES,
  ...SPECIFICATION_WRITES,
  ...STUDY_WRITES,
  ...RECORD_WRITES,
  ...DECISION_WRITES,
  ...CHANGE_WRITES,
  ...DELIBERATION_WRITES,
  ...INSTALLATION_WRITES,
  ...DESK_WRITES,
  ...WORKS_WRITES,
  ...COMPANY_RULE_WRITES,
  ...PART_WRITES,
}

/** What entries of that command write; undefined for a command that this version does not know. */
export const writesOf = (command: string): Writes | undefined => ownMember(ENTRY_WRITES, command)
