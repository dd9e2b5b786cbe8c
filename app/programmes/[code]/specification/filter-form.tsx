import { specificationAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { ChoiceField } from '@/app/ui/field'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { isNarrowed, SHOWN, SHOWN_TEXT, type SheetFilter } from './sheet-filter'

/** Narrows the sheet by stage, owner and what is missing; a plain form, so that the address can be passed on. */
export function FilterForm({ code, filter }: { code: string; filter: SheetFilter }) {
  return (
    <form action={specificationAddress(code)} className="form-row sheet-filter" aria-label="Filter the sheet">
      <ChoiceField
        name="stage"
        label="Stage"
        defaultValue={filter.stage ?? ''}
        choices={[
          { value: '', text: 'All four' },
          ...STAGES.map((value) => ({ value, text: STAGE_NAMES[value] })),
        ]}
      />
      <ChoiceField
        name="department"
        label="Owner"
        defaultValue={filter.department ?? ''}
        choices={[
          { value: '', text: 'Every department' },
          ...DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] })),
        ]}
      />
      <ChoiceField
        name="show"
        label="Show"
        defaultValue={filter.shown}
        choices={SHOWN.map((value) => ({ value, text: SHOWN_TEXT[value] }))}
      />
      <div className="form-actions">
        <Button type="submit">Filter</Button>
        {isNarrowed(filter) && <a href={specificationAddress(code)}>Show everything</a>}
      </div>
    </form>
  )
}
