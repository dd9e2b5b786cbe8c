import type { ReactNode } from 'react'
import { ZoneNamed } from '@/app/forms/works'
import { Breadcrumb, type Crumb } from './breadcrumb'
import { MarksToPlace } from './marks-to-place'
import { ProductMark } from './product-mark'

type SheetProps = {
  /** Where this page is, outermost first; the last one is the page itself and needs no address. */
  place: readonly Crumb[]
  /** Usually a `PlaceNav`. */
  nav?: ReactNode
  /** What stands at the left of the sheet all the while. */
  beside?: ReactNode
  /** Who is signed in, sign-out, and the like; stands at the right of the header. */
  person?: ReactNode
  /** A `TitleBlock`, or an `h1` of your own. Every page needs one of the two. */
  titleBlock?: ReactNode
  /** What was just done, where an act led here. */
  said?: ReactNode
  /** Usually a `TrailHead`; printed at the foot of every page. */
  headHash?: ReactNode
  children: ReactNode
}

/** A plain link: leaving a sheet is a new page, whatever it was drawn with. */
const HOME: string = '/'

/** The frame of every page: skip link, header with the place, navigation, the ruled sheet, foot. */
export function Sheet({ place, nav, beside, person, titleBlock, said, headHash, children }: SheetProps) {
  return (
    <div className="desk">
      {/* Nobody sees a mark before signing in. */}
      {person && <MarksToPlace />}
      <a className="skip-link" href="#sheet">
        Skip to the sheet
      </a>
      <header className="desk-header">
        <a className="desk-name" href={HOME}>
          <ProductMark />
          Liquidus
        </a>
        <Breadcrumb place={place} />
        {person && <div className="desk-aside">{person}</div>}
      </header>
      {nav}
      <div className={beside ? 'desk-body desk-body-beside' : 'desk-body'}>
        {beside}
        <main id="sheet" tabIndex={-1} className="desk-main">
          <div className="sheet">
            <div className="sheet-frame">
              {titleBlock}
              {said}
              <div className="sheet-content">{children}</div>
            </div>
          </div>
        </main>
      </div>
      <footer className="desk-footer">
        <div className="desk-footer-line">
          <p>{place.map(({ text }) => text).join(' – ')}</p>
          {/* Who is not signed in sees no time. */}
          {person && <ZoneNamed />}
          {headHash}
        </div>
      </footer>
    </div>
  )
}
