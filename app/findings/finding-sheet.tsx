import type { ReactNode } from 'react'
import { Caution } from '@/app/ui/caution'
import { Disclosure } from '@/app/ui/disclosure'
import { MarginBar } from '@/app/ui/margin-bar'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { Working } from '@/app/ui/working'
import type { Finding, Part } from '@/shared/rules/finding'

interface FindingSheetProps {
  title: string
  /** Where the whole finding stands, when this is not it. */
  href?: string
  finding: Finding
  /** Whether the working is open from the start. */
  open?: boolean
  /** Below the remedy: a concession, a link. */
  children?: ReactNode
}

/** A finding with its working, its sources, and what would mend it. */
export function FindingSheet({ title, href, finding, open = false, children }: FindingSheetProps) {
  const {
    verdict,
    found,
    limit,
    margin,
    working,
    sources,
    remedy,
    parts = [],
    notes = [],
    cautions = [],
  } = finding
  return (
    <article className="finding" aria-label={title}>
      <header className="finding-head">
        <h3>{href ? <a href={href}>{title}</a> : title}</h3>
        <VerdictMark verdict={verdict} size={open ? 96 : 28} />
      </header>
      <p>{found}</p>
      <p className="finding-limit">Asked: {limit}</p>
      {margin && <MarginBar margin={margin} />}
      {remedy && verdict !== 'meets' && (
        <p className="finding-remedy">
          <strong>Remedy:</strong> {remedy.says}
        </p>
      )}
      {children}
      {parts.length > 0 && (
        <Disclosure
          summary={`Each of the ${parts.length}`}
          open={open || (verdict !== 'meets' && parts.length <= 12)}
        >
          <Parts parts={parts} caption={title} />
        </Disclosure>
      )}
      {working.length > 0 && (
        <Disclosure summary="Working" open={open}>
          <Working lines={working} sources={sources} />
        </Disclosure>
      )}
      {notes.length > 0 && (
        <ul className="finding-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {cautions.map((caution) => (
        <Caution key={caution} hazard="this work can hurt">
          {caution}
        </Caution>
      ))}
    </article>
  )
}

function Parts({ parts, caption }: { parts: readonly Part[]; caption: string }) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={parts}
      rowKey={({ subject }, position) => `${subject} ${position}`}
      columns={[
        { label: 'Which', names: true, cell: ({ subject }) => subject },
        { label: 'Verdict', set: 'shrink', cell: ({ verdict }) => <VerdictMark verdict={verdict} /> },
        {
          label: 'Found',
          cell: ({ found, remedy }) => (
            <>
              {found}
              {remedy && ` ${remedy.says}`}
            </>
          ),
        },
        { label: 'Margin', cell: ({ margin }) => (margin ? <MarginBar margin={margin} /> : '–') },
      ]}
    />
  )
}
