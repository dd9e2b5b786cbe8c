import type { OptionAlternative } from '@/shared/gate/option-alternative'
import { Refused } from '@/shared/refused'

/** The alternative of that name. Refused when the study has none, or it was withdrawn. */
export function standingAlternative(
  alternatives: readonly OptionAlternative[],
  name: string,
): OptionAlternative {
  const found = alternatives.find((entry) => entry.name === name)
  if (!found)
    throw new Refused('The study has no such alternative.', {
      alternative: 'Choose one of the alternatives.',
    })
  if (found.withdrawn)
    throw new Refused(`“${name}” was withdrawn by ${found.withdrawn.byName}: ${found.withdrawn.why}`, {
      alternative: 'Choose one that stands.',
    })
  return found
}
