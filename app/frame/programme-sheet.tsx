import type { ReactNode } from 'react'
import * as to from '@/app/addresses'
import { NarrowCard } from '@/app/frame/narrow-card'
import { NarrowCardButton } from '@/app/frame/narrow-card-button'
import { DoneNotice } from '@/app/forms/done-notice'
import { PersonCorner } from '@/app/frame/person-corner'
import { RenewWithNews } from '@/app/frame/renew-with-news'
import type { Visit } from '@/app/frame/visit'
import { PlaceNav, type Place } from '@/app/ui/place-nav'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock, type TitleCell } from '@/app/ui/title-block'
import { TrailHead } from '@/app/ui/trail-head'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { waitsFor } from '@/shared/gate/action-status'
import type { ActionEntry } from '@/shared/gate/programme-state'

interface ProgrammeSheetProps {
  visit: Visit
  code: string
  /** The address in the programme's navigation that this page belongs to. */
  at: string
  /** Key of the item that the page is about. */
  item?: string | undefined
  /** Further places below the programme, the page itself last. */
  place?: readonly { text: string; href?: string }[]
  title: string
  supplement?: ReactNode
  cells?: readonly TitleCell[]
  /** The page. */
  children: (view: ProgrammeView) => ReactNode
}

/** The frame of every page of a programme. */
export function ProgrammeSheet({
  visit,
  code,
  at,
  item,
  place = [],
  title,
  supplement,
  cells = [],
  children,
}: ProgrammeSheetProps) {
  const { view, person } = visit
  const isRouteCard = at === to.routeCardAddress(code) && place.length === 0
  const home = { text: code, href: to.routeCardAddress(code) }
  return (
    <Sheet
      place={[
        { text: 'Programmes', href: to.programmesAddress() },
        ...(place.length > 0 ? [home, ...place] : [{ text: code }]),
      ]}
      nav={
        <div className="programme-nav">
          {!isRouteCard && <NarrowCardButton />}
          <PlaceNav label={`Programme ${code}`} places={placesOf(view)} current={at} />
        </div>
      }
      beside={!isRouteCard && <NarrowCard view={view} item={item} />}
      person={<PersonCorner person={person} programme={code} />}
      titleBlock={<TitleBlock title={title} supplement={supplement} cells={cells} />}
      said={<DoneNotice />}
      headHash={<TrailHead sequence={view.head.seq} hash={view.head.hash} />}
    >
      <RenewWithNews from={to.liveAddress(code, view.asOf)} />
      {children(view)}
    </Sheet>
  )
}

function placesOf({ code, state, actor }: ProgrammeView): Place[] {
  const waitsForMe: Readonly<Record<ReturnType<typeof waitsFor>, (action: ActionEntry) => boolean>> = {
    answer: ({ to: asked }) => actor.departments.includes(asked),
    acceptance: ({ from }) => actor.departments.includes(from),
    nothing: () => false,
  }
  const waiting = state.actions.filter((action) => waitsForMe[waitsFor(action)](action)).length
  return [
    { text: 'Route card', href: to.routeCardAddress(code) },
    { text: 'Specification', href: to.specificationAddress(code) },
    { text: 'Margins', href: to.marginsAddress(code) },
    { text: 'Actions', href: to.actionsAddress(code), waiting },
    { text: 'Reviews', href: to.reviewsAddress(code) },
    { text: 'Options', href: to.optionsAddress(code) },
    { text: 'Changes', href: to.changeNoticesAddress(code) },
    { text: 'Lots', href: to.lotsAddress(code) },
    { text: 'Logs', href: to.logsAddress(code) },
    { text: 'Inspections', href: to.inspectionsAddress(code) },
    { text: 'Nonconformities', href: to.nonconformitiesAddress(code) },
    { text: 'Records', href: to.recordsAddress(code) },
    { text: 'Reliability', href: to.reliabilityAddress(code) },
    { text: 'Cost', href: to.costAddress(code) },
    { text: 'Lessons', href: to.programmeLessonsAddress(code) },
    { text: 'People', href: to.membersAddress(code) },
    { text: 'Trail', href: to.trailAddress(code) },
  ]
}
