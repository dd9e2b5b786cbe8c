import type { Rights } from '@/app/guard/rights'
import { readWorksTrail, type WorksTrail } from '@/lib/queries/works/trail-subject'

/** The trail of something of the works, for everybody but an administrator. */
export const readsWorksTrail: Rights<{ kind: string; code: string }, WorksTrail> = async (
  person,
  { kind, code },
) => {
  if (person.administrator)
    return { status: 403, message: 'An administrator reads nothing of what the works decide.' }
  const trail = await readWorksTrail(kind, code)
  return trail ? { right: trail } : { status: 404, message: 'The works have nothing that is called so.' }
}
