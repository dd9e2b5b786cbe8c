import { manyPartsAddress, newPartAddress, partAddress, partsAddress } from '@/app/addresses'
import { requirePerson } from '@/app/frame/visit'
import { Button, ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { Pagination } from '@/app/ui/pagination'
import { RuledTable } from '@/app/ui/ruled-table'
import { pageFromAddress, textFromAddress } from '@/lib/queries/from-address'
import { PARTS_A_PAGE, readParts } from '@/lib/queries/works/parts'
import { worksActor } from '@/lib/auth/works-actor'
import { refusal } from '@/shared/policy'
import { PART_KINDS } from '@/shared/works/part-kind'
import { PartsSheet } from './parts-sheet'
import { Standing } from './standing'

export const metadata = { title: 'Parts – Liquidus' }

interface PartsPageProps {
  searchParams: Promise<{ text?: string; page?: string }>
}

/** The parts of the works, described once for every programme that lists them. */
export default async function PartsPage({ searchParams }: PartsPageProps) {
  const person = await requirePerson(partsAddress())
  const given = await searchParams
  const text = textFromAddress(given.text)
  const page = pageFromAddress(given.page)
  const { parts, found } = await readParts(text, page)
  const mayDescribe = !refusal('describe-part', worksActor(person))
  return (
    <PartsSheet
      person={person}
      title="Parts"
      supplement="Each described once, and used by every programme whose parts list names it"
      cells={[{ label: 'Found', value: found }]}
    >
      <form method="get" role="search" className="form-row" aria-label="Find a part">
        <TextField name="text" type="search" label="Part number or description" defaultValue={text} />
        <Button type="submit">Find</Button>
      </form>
      {mayDescribe && (
        <p className="form-actions">
          <ButtonLink href={newPartAddress()}>Describe a part</ButtonLink>
          <ButtonLink href={manyPartsAddress()} kind="quiet">
            Describe many from a table
          </ButtonLink>
        </p>
      )}
      {parts.length > 0 ? (
        <RuledTable
          caption="Parts of the works"
          captionHidden
          rows={parts}
          rowKey={({ code }) => code}
          columns={[
            {
              label: 'Part number',
              names: true,
              cell: ({ code }) => <a href={partAddress(code)}>{code}</a>,
            },
            { label: 'Description', cell: ({ values }) => values.description },
            { label: 'Kind', cell: ({ values }) => PART_KINDS[values.kind].label },
            { label: 'Revision', set: 'number', cell: ({ revision }) => revision },
            { label: 'Stands', cell: ({ standing }) => <Standing standing={standing} /> },
            { label: 'Programmes', set: 'number', cell: ({ listedIn }) => listedIn },
          ]}
        />
      ) : (
        <Empty title={text ? 'None found' : 'No part yet'}>
          {text
            ? 'Look for another number, or another word of its description.'
            : 'Describe the parts that the boards are made of; parts lists name them by their number.'}
        </Empty>
      )}
      <Pagination
        label="Pages of parts"
        page={page}
        pages={Math.ceil(found / PARTS_A_PAGE)}
        addressOf={(to) => `${partsAddress()}?${new URLSearchParams({ text, page: String(to) })}`}
      />
    </PartsSheet>
  )
}
