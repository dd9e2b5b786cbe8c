import { Button } from '@/app/ui/button'
import { ChoiceField, TextField } from '@/app/ui/field'
import type { TrailPage, TrailSearch } from '@/lib/queries/trail'
import { entryLabel } from '@/shared/commands/entry-told'

/** What to look for in the trail; it goes into the address, so a search can be kept or sent. */
export function SearchForm({ search, page }: { search: TrailSearch; page: TrailPage }) {
  return (
    <form method="get" className="form-row" role="search" aria-label="Search the trail">
      <TextField name="text" label="Words" defaultValue={search.text} type="search" />
      <ChoiceField
        name="what"
        label="What"
        defaultValue={search.command}
        choices={[
          { value: '', text: 'anything' },
          ...page.commands.map((value) => ({ value, text: entryLabel(value) })),
        ]}
      />
      <ChoiceField
        name="who"
        label="Who"
        defaultValue={search.actorId}
        choices={[
          { value: '', text: 'anybody' },
          ...page.actors.map(({ id, name }) => ({ value: id, text: name })),
        ]}
      />
      <TextField name="from" label="From" type="date" defaultValue={search.from} />
      <TextField name="until" label="Until" type="date" defaultValue={search.until} />
      <Button type="submit">Search</Button>
    </form>
  )
}
