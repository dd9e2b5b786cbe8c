import { ButtonLink } from './button'

interface FirstStepProps {
  /** What an empty place wants first, as a sentence. */
  first: string
  /** Why this person does not do it, and who does. */
  refused: string | undefined
  /** Where it is done, and what the way there is called; both left out where the form stands in sight. */
  href?: string
  does?: string
}

/** The first thing to do in an empty place: for who may the way to it, for others who does it. */
export const FirstStep = ({ first, refused, href, does }: FirstStepProps) => (
  <>
    <p>{refused ? `${first} ${refused}` : first}</p>
    {!refused && href !== undefined && (
      <p className="form-actions">
        <ButtonLink href={href}>{does}</ButtonLink>
      </p>
    )}
  </>
)
