import type { Actor } from '@/shared/actor'
import { faceOf, type CommandName, type SubjectOf } from '@/shared/commands/all-faces'
import type { Rights } from '@/shared/commands/face'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** The subject, where a command's face asks for one. */
export type SubjectArgument<N extends CommandName> = [SubjectOf<N>] extends [undefined]
  ? []
  : [subject: SubjectOf<N>]

/**
 * Why this person may not do it to this subject, in a sentence for the screen;
 * undefined when they may. The screens ask with what they show, the door with
 * the rows just read.
 */
export function refusal<N extends CommandName>(
  command: N,
  actor: Actor,
  ...[subject]: SubjectArgument<N>
): string | undefined {
  const { refuses } = faceOf(command)
  return (
    partRefusal(command, actor) ??
    refuses?.(actor, subject as never) ??
    absentRefusal(command, actor, (absent) => refuses?.(absent, subject as never))
  )
}

/** What whoever is away could not decide, because of what they did themselves, nobody decides in their stead. */
function absentRefusal(
  command: CommandName,
  actor: Actor,
  refusedAs: (absent: Actor) => string | undefined,
): string | undefined {
  const { may, separates } = faceOf(command)
  if (!may.signature && !separates) return undefined
  for (const { personId, name } of actor.standsInFor ?? []) {
    const refused = refusedAs({ ...actor, personId })
    if (refused) return `${name}, for whom you stand in, could not decide this either. To them: ${refused}`
  }
  return undefined
}

/** Why nobody with this person's part may, whatever it is done to; for where there is no subject yet. */
export function partRefusal(command: CommandName, actor: Actor): string | undefined {
  const rights = faceOf(command).may
  if (rights.scope === 'self') return undefined
  if (actor.auditor) return 'An auditor reads everything and changes nothing.'
  if (rights.administrator) return actor.administrator ? undefined : `Only ${whoMay(rights)} may do this.`
  if (actor.administrator)
    return 'An administrator keeps people and instruments, and takes no part in a programme’s decisions.'
  if (rights.scope === 'works' && actor.departments.length === 0) return NOT_OF_THE_WORKS
  if (rights.anyone) return undefined
  if (rights.lead && actor.leads) return undefined
  if (rights.departments?.some((department) => actor.departments.includes(department))) return undefined
  return `Only ${whoMay(rights)} may do this.`
}

export const NOT_OF_THE_WORKS =
  'You belong to no department of the works, so you read what they keep and change nothing. An administrator can name your department.'

export const NOT_A_MEMBER = 'You are not a member of this programme. Its lead can invite you.'

/** Why this person may not read a programme; undefined when they may. */
export const readRefusal = (actor: Actor): string | undefined =>
  actor.auditor || actor.leads || actor.departments.length > 0 ? undefined : NOT_A_MEMBER

/** "the programme’s lead or quality", for refusals. */
export function whoMay({ scope, departments = [], lead, administrator }: Rights): string {
  if (administrator) return 'an administrator'
  const names = departments.map((department) => DEPARTMENT_NAMES[department].toLowerCase())
  if (scope === 'works') names.push(`${names.pop() ?? 'nobody'} of the works`)
  const all = lead ? ['the programme’s lead', ...names] : names
  return all.length < 2 ? (all[0] ?? 'nobody') : `${all.slice(0, -1).join(', ')} or ${all.at(-1)}`
}
