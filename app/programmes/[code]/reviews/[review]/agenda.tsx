import { placeAddress } from '@/app/place-address'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { verdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { VERDICTS } from '@/shared/rules/finding'
import { AGENDA_GROUPS, type AgendaGroup, type AgendaPoint, type OpenBeside } from '@/shared/reviews/agenda'
import type { Review } from '@/shared/reviews/review'
import { sameSubject } from '@/shared/reviews/subject'
import { commentsPlace, subjectInWords } from '@/shared/reviews/subject-in-words'
import { SubjectLink } from './subject-link'

const HEADINGS: Readonly<Record<AgendaGroup, string>> = {
  findings: 'Findings',
  actions: 'Actions',
  proposals: 'Proposals',
  comments: 'Comments',
  nonconformities: 'Nonconformities',
}
/** Of each group; more would be no agenda. */
const SHOWN = 30

interface AgendaProps {
  view: ProgrammeView
  review: Review
  agenda: readonly AgendaPoint[]
  beside: OpenBeside
}

/** What is open now, and the points that the people put on the agenda themselves. */
export function Agenda({ view, review, agenda, beside }: AgendaProps) {
  const points = review.lines.filter(({ kind, struck }) => kind === 'point' && !struck)
  const minuted = (point: AgendaPoint): boolean =>
    review.lines.some(({ about, struck }) => !struck && sameSubject(about, point.about))
  const groups = AGENDA_GROUPS.flatMap((group) => {
    const rows = agenda.filter((point) => point.group === group)
    if (rows.length === 0) return []
    const more = rows.length - SHOWN
    return [
      {
        key: group,
        heading: `${HEADINGS[group]}${more > 0 ? `, ${SHOWN} of ${rows.length}` : ''}`,
        rows: rows.slice(0, SHOWN),
      },
    ]
  })
  return (
    <Section
      id="agenda"
      heading="Agenda"
      lead="Made from what is open now; it shortens as things are settled."
    >
      {groups.length === 0 && points.length === 0 && (
        <Empty title="Nothing is open">
          No finding fails, no action and no proposal waits. A point of its own is put on the agenda below.
        </Empty>
      )}
      {points.length > 0 && (
        <ol className="own-points">
          {points.map(({ number, text, author }) => (
            <li key={number}>
              {text} <span className="faint">({author})</span>
            </li>
          ))}
        </ol>
      )}
      {groups.length > 0 && (
        <RuledTable
          caption="What is open"
          captionHidden
          groups={groups}
          rowKey={({ about }) => `${about.kind} ${about.key}`}
          columns={[
            { label: 'Point', names: true, cell: (point) => <Point {...{ view, review, beside, point }} /> },
            { label: 'Stands', cell: (point) => <Stands point={point} /> },
            {
              label: 'Minuted',
              set: 'shrink',
              cell: (point) => (minuted(point) ? 'yes' : <span className="faint">not yet</span>),
            },
          ]}
        />
      )}
    </Section>
  )
}

function Point({
  view,
  review,
  beside,
  point,
}: {
  view: ProgrammeView
  review: Review
  beside: OpenBeside
  point: AgendaPoint
}) {
  const comment = beside.comments.find(({ number }) => String(number) === point.about.key)
  if (point.group === 'comments' && comment)
    return (
      <a href={placeAddress(view.code, commentsPlace(comment.about))}>
        Comment {comment.number} on {subjectInWords(comment.about)}
      </a>
    )
  const action =
    point.about.kind === 'action' &&
    view.state.actions.find(({ number }) => String(number) === point.about.key)
  return (
    <>
      <SubjectLink view={view} review={review} subject={point.about} />
      {action && <>: {action.question}</>}
    </>
  )
}

function Stands({ point: { open, count } }: { point: AgendaPoint }) {
  const verdict = VERDICTS.find((one) => one === open)
  if (!verdict) return <>{open}</>
  return (
    <>
      {verdictMark(verdict)}
      {count > 1 && ` ${count} findings`}
    </>
  )
}
