import type { ReactNode } from 'react'
import { ButtonLink } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { counted } from '@/shared/quantity/counted'
import { refusal } from '@/shared/policy'
import type { ValueProposal } from './value-proposal'

interface ProposedValueProps {
  view: ProgrammeView
  proposal: ValueProposal
  /** Where the form stands filled in with it. */
  href: string
  /** Whose word it is: "the parts", "the files". */
  source: string
  /** What takes it over together with others, where it can be. */
  adopt?: ReactNode
  /** Whether it has cells that only a person can fill in. */
  incomplete?: boolean
}

const MOST_OPEN = 8

/** One value as it is proposed: what differs from the one that stands, and the way to its form. */
export function ProposedValue({
  view,
  proposal: { parameter, differences },
  href,
  source,
  adopt,
  incomplete = false,
}: ProposedValueProps) {
  const mayRevise = !refusal('revise-parameter', view.actor, parameter)
  return (
    <div>
      <h3>{parameter.label}</h3>
      {differences.length === 0 ? (
        <p>Stands as {source} have it.</p>
      ) : (
        <>
          <Disclosure
            summary={counted(differences.length, 'difference', 'differences')}
            open={differences.length <= MOST_OPEN}
          >
            <ul>
              {differences.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </Disclosure>
          {adopt}
          {mayRevise && incomplete && (
            <p className="field-hint">Cells that {source} cannot know are blank: fill them in by its form.</p>
          )}
          {mayRevise && (
            <ButtonLink href={href}>
              Fill in the form<span className="sr-only"> of {parameter.label}</span> with it
            </ButtonLink>
          )}
        </>
      )}
    </div>
  )
}
