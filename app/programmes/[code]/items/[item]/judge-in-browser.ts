import { liveTurns, type LiveTurns, type SpecificationFacts } from '@/shared/gate/live-turns'
import { findParameter } from '@/shared/catalogue/standard-plan'

export type LiveAnswer = { readonly message: string } | { readonly turns: LiveTurns }

/** The catalogue and its rules as the server has them; loaded only once somebody types. */
export function judgeInBrowser(key: string, draft: unknown, facts: SpecificationFacts): LiveAnswer {
  const parameter = findParameter(key)
  if (!parameter) return { message: 'The specification has no such parameter.' }
  const parsed = parameter.schema.safeParse(draft)
  if (!parsed.success) return { message: parsed.error.issues[0]?.message ?? 'The value cannot be read.' }
  return { turns: liveTurns(parameter, parsed.data, facts) }
}
