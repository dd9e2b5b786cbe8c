import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'

/** Whom a command is asked by: department memberships are those of the programme in question. */
export interface Actor {
  readonly personId: string
  readonly name: string
  readonly departments: readonly Department[]
  readonly leads: boolean
  readonly auditor: boolean
  readonly administrator: boolean
}

/** Who may do what. `signature` asks for the password again. */
export interface PolicyRow {
  readonly does: string
  readonly scope: 'programme' | 'installation' | 'self'
  /** Members of these departments may. */
  readonly departments?: readonly Department[]
  /** The programme's lead may, whatever department. */
  readonly lead?: true
  readonly administrator?: true
  /** Any signed-in person who is neither auditor nor administrator may. */
  readonly anyone?: true
  readonly signature?: true
}

const ALL: readonly Department[] = ['design', 'production', 'quality']

/** Every command there is. A command that is not in the table cannot be written. */
export const POLICY = {
  'open-programme': { does: 'Open a programme', scope: 'programme', anyone: true },
  'invite-member': { does: 'Invite a person into a department', scope: 'programme', lead: true },
  'remove-member': { does: 'Take a person out of a department', scope: 'programme', lead: true },
  'hand-over-lead': { does: 'Hand the lead to another member', scope: 'programme', lead: true },
  'take-lead': {
    does: 'Take the lead of a programme whose lead can no longer sign in',
    scope: 'programme',
    departments: ['quality'],
  },

  'add-item': { does: 'Add an item to the plan', scope: 'programme', lead: true, departments: ['quality'] },
  'propose-set-aside': { does: 'Propose to set an item aside', scope: 'programme', departments: ALL },
  'decide-set-aside': {
    does: 'Agree or refuse to set an item aside',
    scope: 'programme',
    departments: ['quality'],
  },
  'restore-item': {
    does: 'Bring an item back into the plan',
    scope: 'programme',
    departments: ['quality'],
    lead: true,
  },

  'revise-parameter': { does: 'Revise a specified value', scope: 'programme', departments: ALL, lead: true },
  'state-requirement': {
    does: 'State a requirement on a limit',
    scope: 'programme',
    departments: ['design', 'quality'],
  },
  'withdraw-requirement': {
    does: 'Withdraw a requirement',
    scope: 'programme',
    departments: ['design', 'quality'],
  },
  'open-option-study': { does: 'Open an option study', scope: 'programme', departments: ALL, lead: true },
  'adopt-option': { does: 'Adopt an option', scope: 'programme', departments: ALL, lead: true },

  'attach-evidence': { does: 'Attach evidence to an item', scope: 'programme', departments: ALL },
  'withdraw-evidence': { does: 'Withdraw evidence', scope: 'programme', departments: ALL },

  'receive-lot': { does: 'Receive a lot', scope: 'programme', departments: ['quality', 'production'] },
  'test-lot': { does: 'Record a test of a lot', scope: 'programme', departments: ['quality'] },
  'withdraw-lot-test': { does: 'Withdraw a test of a lot', scope: 'programme', departments: ['quality'] },
  'dispose-lot': { does: 'Decide what becomes of a lot', scope: 'programme', departments: ['quality'] },
  'trace-lot': {
    does: 'Record which assemblies a lot went into',
    scope: 'programme',
    departments: ['production', 'quality'],
  },

  'open-log': { does: 'Open a log', scope: 'programme', departments: ['production', 'quality'] },
  'add-readings': {
    does: 'Add readings to a log',
    scope: 'programme',
    departments: ['production', 'quality'],
  },
  'record-inspection': { does: 'Record an inspection', scope: 'programme', departments: ['quality'] },
  'withdraw-inspection': { does: 'Withdraw an inspection', scope: 'programme', departments: ['quality'] },
  'add-record': { does: 'Add a record', scope: 'programme', departments: ALL },
  'withdraw-record': { does: 'Withdraw a record', scope: 'programme', departments: ALL },
  'create-machine-token': {
    does: 'Let a machine push readings',
    scope: 'programme',
    departments: ['production', 'quality'],
  },
  'revoke-machine-token': {
    does: 'Stop a machine pushing readings',
    scope: 'programme',
    departments: ['production', 'quality'],
  },

  'ask-action': { does: 'Ask another department', scope: 'programme', departments: ALL },
  'answer-action': { does: 'Answer an action', scope: 'programme', departments: ALL },
  'accept-answer': { does: 'Accept an answer', scope: 'programme', departments: ALL },
  'return-answer': { does: 'Return an answer', scope: 'programme', departments: ALL },
  'withdraw-action': { does: 'Withdraw an action', scope: 'programme', departments: ALL },

  'approve-item': { does: 'Approve an item', scope: 'programme', departments: ALL, signature: true },
  'request-concession': { does: 'Ask for a concession', scope: 'programme', departments: ALL },
  'grant-concession': {
    does: 'Grant a concession',
    scope: 'programme',
    departments: ['design', 'quality'],
    signature: true,
  },
  'refuse-concession': {
    does: 'Refuse a concession',
    scope: 'programme',
    departments: ['design', 'quality'],
  },
  'propose-lesson': {
    does: 'Propose a lesson for later programmes',
    scope: 'programme',
    departments: ALL,
    lead: true,
  },
  'decide-lesson': {
    does: 'Accept or decline a lesson',
    scope: 'programme',
    departments: ['quality'],
    signature: true,
  },
  'retire-lesson': {
    does: 'Retire an accepted lesson',
    scope: 'programme',
    departments: ['quality'],
    signature: true,
  },
  'sign-gate': { does: 'Sign a gate', scope: 'programme', departments: ALL, signature: true },

  'add-person': { does: 'Add a person', scope: 'installation', administrator: true },
  'change-person': {
    does: 'Change a person’s name, address or rights',
    scope: 'installation',
    administrator: true,
  },
  'disable-person': { does: 'Disable a person', scope: 'installation', administrator: true },
  'enable-person': { does: 'Enable a person', scope: 'installation', administrator: true },
  'reset-password': { does: 'Give a person a one-time password', scope: 'installation', administrator: true },
  'add-instrument': { does: 'Add an instrument', scope: 'installation', administrator: true },
  'calibrate-instrument': { does: 'Record a calibration', scope: 'installation', administrator: true },
  'take-instrument-out-of-use': {
    does: 'Take an instrument out of use',
    scope: 'installation',
    administrator: true,
  },
  'change-own-password': { does: 'Change one’s own password', scope: 'self' },
} as const satisfies Record<string, PolicyRow>

export type CommandName = keyof typeof POLICY
export const COMMAND_NAMES = Object.keys(POLICY) as CommandName[]

/** Why this person may not, in a sentence for the screen; undefined when they may. */
export function refusal(command: CommandName, actor: Actor): string | undefined {
  const row: PolicyRow = POLICY[command]
  if (row.scope === 'self') return undefined
  if (actor.auditor) return 'An auditor reads everything and changes nothing.'
  if (row.administrator) return actor.administrator ? undefined : 'Only an administrator may do this.'
  if (actor.administrator)
    return 'An administrator keeps people and instruments, and takes no part in a programme’s decisions.'
  if (row.anyone) return undefined
  if (row.lead && actor.leads) return undefined
  if (row.departments?.some((department) => actor.departments.includes(department))) return undefined
  return `Only ${whoMay(row)} may do this.`
}

export const NOT_A_MEMBER = 'You are not a member of this programme. Its lead can invite you.'

/** Why this person may not read a programme; undefined when they may. */
export const readRefusal = (actor: Actor): string | undefined =>
  actor.auditor || actor.leads || actor.departments.length > 0 ? undefined : NOT_A_MEMBER

/** "the programme’s lead or quality", for tables and refusals. */
export function whoMay(row: PolicyRow): string {
  if (row.administrator) return 'an administrator'
  if (row.scope === 'self') return 'each person for themselves'
  if (row.anyone) return 'anyone who is neither auditor nor administrator'
  const names = (row.departments ?? []).map((department) => DEPARTMENT_NAMES[department].toLowerCase())
  const all = row.lead ? ['the programme’s lead', ...names] : names
  return all.length < 2 ? (all[0] ?? 'nobody') : `${all.slice(0, -1).join(', ')} or ${all.at(-1)}`
}
