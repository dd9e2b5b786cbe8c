import { ChoiceBox, LinesBox, NumberBox, PickBox, TextBox } from '@/app/forms/fields'
import { ApproversBoxes } from '@/app/programmes/[code]/items/new/approvers-boxes'
import { ALL_LIMITS } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { formatQuantity } from '@/shared/quantity/format'

/** The item that later plans get. */
export function ChangeItemFields() {
  return (
    <>
      <TextBox name="change.item.title" label="Title of the item" maxLength={120} required />
      <LinesBox name="change.item.asks" label="What the item settles" maxLength={500} required />
      <PickBox
        name="change.item.stage"
        label="Stage"
        choices={STAGES.map((value) => ({ value, text: STAGE_NAMES[value] }))}
        required
      />
      <PickBox
        name="change.item.owner"
        label="Owner"
        choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
        required
      />
      <ApproversBoxes item="change.item" />
      <TextBox name="change.item.evidence" label="Evidence it wants" maxLength={120} optional />
    </>
  )
}

/** The stricter company limit that later programmes get. */
export function ChangeLimitFields() {
  return (
    <>
      <ChoiceBox
        name="change.limit"
        label="Limit"
        hint="With the value that every programme starts with."
        choices={[
          { value: '', text: 'Choose' },
          ...ALL_LIMITS.map(({ key, label, direction, unit, byDefault }) => ({
            value: key,
            text: `${label}: ${direction} ${formatQuantity(byDefault.value, unit)}`,
          })),
        ]}
        required
      />
      <NumberBox
        name="change.value"
        label="Stricter value"
        hint="In the unit of the limit. A looser one would change nothing: the strictest rules."
        required
      />
    </>
  )
}
