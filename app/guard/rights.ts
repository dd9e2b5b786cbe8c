import type { NotLetIn } from '@/app/guard/refused-answer'
import type { SignedIn } from '@/lib/auth/session'
import { worksActor } from '@/lib/auth/works-actor'
import { readProgramme, type ProgrammeView } from '@/lib/queries/programme-reader'
import type { CommandName } from '@/shared/commands/all-faces'
import { partRefusal } from '@/shared/policy'

/** Decides whether a person may have what an address names, and hands over what was read to decide it. */
export type Rights<Params, Right> = (
  person: SignedIn,
  params: Params,
) => Promise<{ readonly right: Right } | NotLetIn>

interface InProgramme {
  readonly code: string
}

/** The installation's own trail is for its administrators, and for auditors. */
export const readsInstallation: Rights<unknown, undefined> = async ({ administrator, auditor }) =>
  administrator || auditor
    ? { right: undefined }
    : { status: 403, message: 'Only an administrator or an auditor may read this.' }

/** The trails of programmes are for everybody but an administrator; which ones, the query decides. */
export const readsTrails: Rights<unknown, undefined> = async ({ administrator }) =>
  administrator ? { status: 403, message: 'An administrator reads no programme.' } : { right: undefined }

/** A programme, for those who may read it. */
export const readsProgramme: Rights<InProgramme, ProgrammeView> = async (person, { code }) => {
  const read = await readProgramme(code, person)
  if (!read.found) return { status: 404, message: 'There is no such programme.' }
  return read.view ? { right: read.view } : { status: 403, message: read.refused }
}

/** A programme, for those who may read it and, by their part, give a command there; whose it is the door decides. */
export const mayInProgramme =
  (command: CommandName): Rights<InProgramme, ProgrammeView> =>
  async (person, params) => {
    const read = await readsProgramme(person, params)
    if (!('right' in read)) return read
    const message = partRefusal(command, read.right.actor)
    return message === undefined ? read : { status: 403, message }
  }

/** What the works keep is read by everybody who is signed in. */
export const readsTheWorks: Rights<unknown, undefined> = async () => ({ right: undefined })

/** What the rights hand over, for those who may, by their department in the works, give a command there. */
export const mayAtTheWorks =
  <Params, Right>(command: CommandName, then: Rights<Params, Right>): Rights<Params, Right> =>
  async (person, params) => {
    const message = partRefusal(command, worksActor(person))
    return message === undefined ? then(person, params) : { status: 403, message }
  }

/** Nothing is handed over. */
export const nothingMore: Rights<unknown, undefined> = async () => ({ right: undefined })
