import type { Choice } from '@/app/ui/field'
import type { BareBox } from './boxes'

/** A list to choose from in a cell of a table. */
export const ChoiceCell = ({ choices, ...box }: BareBox & { choices: readonly Choice[] }) => (
  <select className="control" {...box}>
    {choices.map(({ value, text }) => (
      <option key={value} value={value}>
        {text}
      </option>
    ))}
  </select>
)
