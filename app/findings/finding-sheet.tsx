import { useId, type ReactNode } from 'react'
import { FindingParts } from '@/app/findings/finding-parts'
import { RemedyLine } from '@/app/findings/remedy-line'
import { Cautions } from '@/app/ui/cautions'
import { Disclosure } from '@/app/ui/disclosure'
import { MarginBar } from '@/app/ui/margin-bar'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { Working } from '@/app/ui/working'
import { WANTS_REMEDY, type Finding } from '@/shared/rules/finding'

interface FindingSheetProps {
  title: string
  /** Where the whole finding stands, when this is not it. */
  href?: string
  finding: Finding
  /** The programme, so that a remedy can be filled in. */
  code?: string
  /** Whether the working is open from the start. */
  open?: boolean
  /** The page says the cautions itself, once for all that it shows. */
  cautioned?: boolean
  /** In full with every working, as a record is kept; a sheet of an item names what needs a hand. */
  printedInFull?: boolean
  /** Beside the working: a concession, a link. */
  children?: ReactNode
}

/** A finding with its working, its sources, and what would mend it. */
export function FindingSheet({ title, href, ...body }: FindingSheetProps) {
  const headingId = useId()
  const { finding, open = false } = body
  const Heading = open ? 'h2' : 'h3'
  return (
    <article className={findingLook(finding)} aria-labelledby={headingId}>
      <header className="finding-head">
        <Heading id={headingId}>{href ? <a href={href}>{title}</a> : title}</Heading>
        <VerdictMark verdict={finding.verdict} size={open ? 96 : 28} />
      </header>
      <FindingBody title={title} {...body} />
    </article>
  )
}

/** How a finding is ruled at its side. */
export const findingLook = ({ verdict }: Finding): string => `finding finding-${verdict.replace(' ', '-')}`

/** What was found against which requirement, with its margin, remedy and working. */
export function FindingBody({
  title,
  finding,
  code,
  open = false,
  cautioned = false,
  printedInFull = open,
  children,
}: Omit<FindingSheetProps, 'href'>) {
  const { verdict, found, limit, margin, remedy, parts = [], notes = [], cautions = [] } = finding
  return (
    <>
      <div className="finding-body">
        <div className="finding-says">
          <p>{found}</p>
          <p className="finding-limit">Requirement: {limit}</p>
          {remedy && WANTS_REMEDY[verdict] && (
            <p>
              <RemedyLine remedy={remedy} code={code} />
            </p>
          )}
          {children}
        </div>
        {margin && (
          <div className="finding-margin">
            <MarginBar margin={margin} />
          </div>
        )}
      </div>
      {!cautioned && <Cautions of={cautions} />}
      {parts.length > 0 && (
        <Disclosure
          summary={`Results by part (${parts.length})`}
          open={open}
          printed={printedInFull || parts.some((part) => WANTS_REMEDY[part.verdict])}
        >
          <FindingParts parts={parts} caption={title} code={code} inFull={printedInFull} />
        </Disclosure>
      )}
      <WorkingAndNotes finding={finding} notes={notes} open={open} printed={printedInFull} />
    </>
  )
}

/** Folded away on an item, open on the finding's own page. */
function WorkingAndNotes({
  finding: { working, sources },
  notes,
  open,
  printed,
}: {
  finding: Finding
  notes: readonly string[]
  open: boolean
  printed: boolean
}) {
  if (working.length === 0 && notes.length === 0) return null
  return (
    <Disclosure
      summary={notes.length > 0 ? 'Calculation and assumptions' : 'Calculation'}
      open={open}
      printed={printed}
    >
      {working.length > 0 && <Working lines={working} sources={sources} />}
      {notes.length > 0 && (
        <ul className="finding-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
    </Disclosure>
  )
}
