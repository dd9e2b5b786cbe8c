import { NumberBox, TextBox } from '@/app/forms/fields'

/** For how many, and until when: one of both at least. */
export const PermissionBounds = () => (
  <>
    <NumberBox name="quantity" label="For how many" unit="boards" optional />
    <TextBox name="untilOn" type="date" label="Until" hint="A number, a last day, or both." optional />
  </>
)
