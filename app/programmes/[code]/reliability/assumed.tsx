import { limitAddress, parameterAddress, recordKindAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { RecordAuthor } from '@/lib/queries/record-authors'
import { assumptionsOf, type Assumption } from '@/shared/reliability/assumptions'
import type { Known } from './known'

interface AssumedProps {
  view: ProgrammeView
  known: Known
  authors: ReadonlyMap<string, RecordAuthor>
}

/** What no joint has shown, and who answers for it. */
export function Assumed({ view, known, authors }: AssumedProps) {
  return (
    <Section
      heading="Assumed"
      lead="No test of a joint shows these; a figure is worth no more than they are."
    >
      <RuledTable
        caption="What is assumed"
        captionHidden
        narrow="cards-early"
        rows={assumptionsOf(view.state.facts, known.target, known.tests)}
        rowKey={({ what }, position) => `${what} ${position}`}
        columns={[
          { label: 'What', names: true, cell: ({ what }) => what },
          {
            label: 'Value, and where it comes from',
            cell: ({ value, source }) => (
              <>
                {value}
                <span className="assumed-source">
                  <br />
                  {source.cite} ({source.how})
                </span>
              </>
            ),
          },
          {
            label: 'By',
            cell: ({ by }) => <By by={by} view={view} specimens={known.specimens} authors={authors} />,
          },
        ]}
      />
    </Section>
  )
}

interface ByProps {
  by: Assumption['by']
  view: ProgrammeView
  specimens: Known['specimens']
  authors: AssumedProps['authors']
}

function By({ by, view: { code, state }, specimens, authors }: ByProps) {
  if (by.kind === 'model') return <>the model; nobody has specified it</>
  if (by.kind === 'limit') return <a href={limitAddress(code, by.key)}>the limit in force</a>
  if (by.kind === 'parameter') {
    const revision = state.revisions.get(by.key)
    const href = parameterAddress(code, by.key)
    if (!revision) return <a href={href}>nobody yet</a>
    return (
      <a href={href}>
        {revision.authorName}, <Day at={revision.at} />
      </a>
    )
  }
  const author = specimens.filter(({ test }) => test === by.key).map(({ id }) => authors.get(id))[0]
  return (
    <a href={recordKindAddress(code, 'life-test')}>
      {author ? (
        <>
          {author.name}, <Day at={author.at} />
        </>
      ) : (
        'the life test’s records'
      )}
    </a>
  )
}
