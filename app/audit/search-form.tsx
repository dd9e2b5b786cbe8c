import { Button } from '@/app/ui/button'
import { ChoiceField, TextField } from '@/app/ui/field'
import type { AuditSearch } from '@/lib/queries/audit'
import { COMMAND_NAMES } from '@/shared/commands/all-faces'
import { entryLabel } from '@/shared/commands/entry-told'

/** What to look for over all trails; it goes into the address, so a search can be kept or sent. */
export function SearchForm({ search }: { search: AuditSearch }) {
  return (
    <form method="get" className="form-row" role="search" aria-label="Search the trails">
      <TextField name="programme" label="Programme" defaultValue={search.code} type="search" />
      <TextField name="text" label="Words" defaultValue={search.text} type="search" />
      <ChoiceField
        name="what"
        label="What"
        defaultValue={search.command}
        choices={[
          { value: '', text: 'anything' },
          ...COMMAND_NAMES.map((value) => ({ value, text: entryLabel(value) })),
        ]}
      />
      <TextField name="who" label="Who" defaultValue={search.who} type="search" />
      <TextField name="from" label="From" type="date" defaultValue={search.from} />
      <TextField name="until" label="Until" type="date" defaultValue={search.until} />
      <Button type="submit">Search</Button>
    </form>
  )
}
