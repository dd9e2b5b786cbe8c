import type { ReactNode } from 'react'
import * as to from '@/app/addresses'
import { DoneNotice } from '@/app/forms/done-notice'
import { PersonCorner } from '@/app/frame/person-corner'
import { RenewWithNews } from '@/app/frame/renew-with-news'
import { PlaceNav, type Place } from '@/app/ui/place-nav'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock, type TitleCell } from '@/app/ui/title-block'
import type { SignedIn } from '@/lib/auth/session'

interface DeskSheetProps {
  person: SignedIn
  at: string
  title: string
  supplement?: ReactNode
  cells?: readonly TitleCell[]
  place?: readonly { text: string; href?: string }[]
  /** How far the trails behind the page are: it then renews itself with their news. */
  newsSince?: string
  children: ReactNode
}

/** The frame of the pages outside any programme. */
export function DeskSheet({
  person,
  at,
  title,
  supplement,
  cells = [],
  place,
  newsSince,
  children,
}: DeskSheetProps) {
  return (
    <Sheet
      place={place ?? [{ text: title }]}
      nav={<PlaceNav label="Desk" places={deskPlaces(person)} current={at} />}
      person={<PersonCorner person={person} />}
      titleBlock={<TitleBlock title={title} supplement={supplement} cells={cells} />}
      said={<DoneNotice />}
    >
      {newsSince !== undefined && <RenewWithNews from={to.deskLiveAddress(newsSince)} />}
      {children}
    </Sheet>
  )
}

/** Auditors and administrators owe nothing, so they have no desk; an administrator reads no programme. */
export function deskPlaces({ auditor, administrator }: SignedIn): Place[] {
  const instruments = { text: 'Instruments', href: to.instrumentsAddress() }
  const works = [
    { text: 'Training', href: to.worksPeopleAddress() },
    { text: 'Company rules', href: to.companyRulesAddress() },
  ]
  const glossary = { text: 'Glossary', href: to.glossaryAddress() }
  if (administrator) {
    return [
      instruments,
      ...works,
      { text: 'People', href: to.peopleAddress() },
      { text: 'Administration', href: to.administrationAddress() },
      glossary,
    ]
  }
  return [
    ...(auditor ? [] : [{ text: 'Desk', href: to.deskAddress() }]),
    { text: 'Programmes', href: to.programmesAddress() },
    { text: 'Works', href: to.worksAddress() },
    { text: 'Lessons', href: to.lessonsAddress() },
    { text: 'Audit', href: to.auditAddress() },
    instruments,
    glossary,
  ]
}
