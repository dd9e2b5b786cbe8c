import { notFound } from 'next/navigation'
import { tourAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import type { SignedIn } from '@/lib/auth/session'
import { demoIsLoaded } from '@/lib/queries/demo-loaded'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { TOURS, type TourRole } from './tours'

export const metadata = { title: 'Tour of the demo – Liquidus' }

/** Five pages of the demo for whoever is signed in, each with what to look at. */
export default async function TourPage() {
  const person = await requirePerson(tourAddress())
  if (!(await demoIsLoaded())) notFound()
  const role = roleOf(person)
  return (
    <DeskSheet
      person={person}
      at={tourAddress()}
      title="Tour of the demo"
      supplement="Five pages, each with one thing to look at; come back here for the next"
      cells={[{ label: 'For', value: ROLE_NAMES[role] }]}
    >
      <ol className="tour">
        {TOURS[role].map(({ title, href, lookAt }) => (
          <li key={href}>
            <a href={href}>{title}</a>
            <p>{lookAt}</p>
          </li>
        ))}
      </ol>
      <p className="faint">Sign in as somebody of another role to be shown what they come for.</p>
    </DeskSheet>
  )
}

const roleOf = ({ auditor, administrator, worksDepartment }: SignedIn): TourRole =>
  auditor ? 'auditor' : administrator ? 'administrator' : (worksDepartment ?? 'design')

const ROLE_NAMES: Readonly<Record<TourRole, string>> = {
  ...DEPARTMENT_NAMES,
  auditor: 'Auditor',
  administrator: 'Administrator',
}
