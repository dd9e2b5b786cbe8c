import { ChoiceBox, LinesBox, TickBox } from '@/app/forms/fields'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { Member } from '@/shared/gate/programme-state'

interface AttendanceBoxesProps {
  members: readonly Member[]
  chair: string
  present: readonly string[]
  /** "Name, what they came for" */
  guests: readonly string[]
}

/** Who chairs, who of the members is there, and guests one a line. */
export function AttendanceBoxes({ members, chair, present, guests }: AttendanceBoxesProps) {
  const people = new Map<string, { name: string; departments: string[] }>()
  for (const { personId, name, department } of members) {
    const known = people.get(personId)?.departments ?? []
    people.set(personId, { name, departments: [...known, DEPARTMENT_NAMES[department].toLowerCase()] })
  }
  return (
    <>
      <ChoiceBox
        name="chair"
        label="Chair"
        defaultValue={chair}
        choices={[...people].map(([value, { name }]) => ({ value, text: name }))}
      />
      <fieldset className="field field-fieldset">
        <legend className="field-label">Members present</legend>
        {[...people].map(([id, { name, departments }]) => (
          <TickBox
            key={id}
            name={`members.${id}`}
            label={`${name}, ${departments.join(' and ')}`}
            defaultChecked={present.includes(id)}
          />
        ))}
      </fieldset>
      <LinesBox
        name="guests"
        label="Guests"
        rows={2}
        hint="One a line: name, then what they came for after a comma."
        defaultValue={guests.join('\n')}
        optional
      />
    </>
  )
}
