import { redirect } from 'next/navigation'
import { assembliesAddress, assemblyAddress, lotsAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Button } from '@/app/ui/button'
import { TextField } from '@/app/ui/field'
import { TakeTable } from '@/app/ui/take-table'
import { assembliesOnRecord } from '@/shared/records/assembly-life'
import { serialKey } from '@/shared/records/serials-in-text'
import { AssemblyList } from './assembly-list'

export const generateMetadata = programmeTitle(({ code }) => `Assemblies, ${code}`)

/** Every assembly on record, found by its serial number: the way back from a board to its lots. */
export default programmePage<object, { serial?: string; page?: string }>(
  async ({ visit, code, searchParams: { serial = '', page } }) => {
    const all = assembliesOnRecord(visit.view.state.facts.records)
    const wanted = serialKey(serial)
    const found = all.filter((one) => serialKey(one).includes(wanted))
    const exact = found.find((one) => serialKey(one) === wanted)
    if (exact) redirect(assemblyAddress(code, exact))
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={lotsAddress(code)}
        place={[
          { text: 'Lots', href: lotsAddress(code) },
          { text: 'Assemblies', href: assembliesAddress(code) },
        ]}
        title="Assemblies"
        supplement="From a board back to the lots it is made of, and to all that was done to it"
        cells={[{ label: 'On record', value: all.length }]}
      >
        {(view) => (
          <>
            <form
              method="get"
              action={assembliesAddress(code)}
              role="search"
              className="form-row"
              aria-label="Find an assembly"
            >
              <TextField
                name="serial"
                type="search"
                label="Serial number"
                hint="All of it, or a part."
                defaultValue={serial}
              />
              <Button type="submit">Find</Button>
            </form>
            <AssemblyList view={view} serials={found} asked={serial} page={Number(page)} />
            {all.length > 0 && <TakeTable address={tableAddress(code, 'assemblies')} what="All assemblies" />}
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
