import { forbidden, notFound, redirect } from 'next/navigation'
import { cache } from 'react'
import { addressPart } from '@/app/address-part'
import { personLetIn } from '@/app/guard/person-let-in'
import type { SignedIn } from '@/lib/auth/session'
import { readProgramme, type ProgrammeView } from '@/lib/queries/programme-reader'

/** The person signed in; everybody else goes to the sign-in page, and a one-time password is changed first. */
export async function requirePerson(then?: string): Promise<SignedIn> {
  const came = await personLetIn(then)
  return 'person' in came ? came.person : redirect(came.goTo)
}

export interface Visit {
  readonly person: SignedIn
  readonly view: ProgrammeView
}

/** The programme of an address, for a person who may read it, which others are told with 403; once a request. */
export const visitProgramme = cache(async (code: string): Promise<Visit> => {
  const person = await requirePerson(`/programmes/${code}`)
  const read = await readProgramme(addressPart(code), person)
  if (!read.found) notFound()
  return read.view ? { person, view: read.view } : forbidden()
})
