import { RemedyLine } from '@/app/findings/remedy-line'
import { WANTS_REMEDY, type Part } from '@/shared/rules/finding'

interface FoundWithRemedyProps {
  part: Pick<Part, 'found' | 'remedy' | 'verdict'>
  /** Of the programme, for the way to what the remedy would change. */
  code?: string | undefined
}

/** What was found of one part, and what would make it meet where that is wanted. */
export const FoundWithRemedy = ({ part: { found, remedy, verdict }, code }: FoundWithRemedyProps) => (
  <>
    {found}
    {remedy && WANTS_REMEDY[verdict] && (
      <>
        {' '}
        <RemedyLine remedy={remedy} code={code} />
      </>
    )}
  </>
)
