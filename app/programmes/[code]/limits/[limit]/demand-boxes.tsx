import { ChoiceBox, NumberBox, TextBox, TickBox } from '@/app/forms/fields'
import { AUTHORITIES, type Limit } from '@/shared/plan/requirement'
import { printedUnit } from '@/shared/quantity/unit'

/** What one document demands of a limit; the boxes are named under `within`. */
export function DemandBoxes({ limit, within = '', hint }: { limit: Limit; within?: string; hint?: string }) {
  return (
    <>
      <ChoiceBox
        name={`${within}authority`}
        label="Authority"
        choices={AUTHORITIES.map((value) => ({ value, text: value }))}
      />
      <TextBox name={`${within}document`} label="Document" required />
      <TextBox name={`${within}clause`} label="Clause" optional />
      <NumberBox
        name={`${within}value`}
        label={`Value, ${limit.direction}`}
        unit={printedUnit(limit.unit)}
        required
      />
      <TickBox
        name={`${within}relaxes`}
        label="The document expressly permits this although layers below it are stricter"
        hint={hint}
      />
    </>
  )
}
