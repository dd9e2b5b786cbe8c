import { newProgrammeAddress, programmesAddress, routeCardAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { statusOf } from '@/app/programmes/status'
import { Button, ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { TourOffer } from '@/app/tour/tour-offer'
import { GateMark } from '@/app/ui/gate-mark'
import { Pagination } from '@/app/ui/pagination'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { pageFromAddress, textFromAddress } from '@/lib/queries/from-address'
import { PROGRAMMES_A_PAGE, readProgrammes } from '@/lib/queries/programmes'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'

export const metadata = { title: 'Programmes – Liquidus' }

interface ProgrammesPageProps {
  searchParams: Promise<{ text?: string; page?: string }>
}

/** The programmes this person may read, with their four gates. */
export default async function ProgrammesPage({ searchParams }: ProgrammesPageProps) {
  const person = await requirePerson(programmesAddress())
  const given = await searchParams
  const text = textFromAddress(given.text)
  const page = pageFromAddress(given.page)
  const { programmes, found } = await readProgrammes(person, text, page)
  const mayOpen = !person.auditor && !person.administrator
  return (
    <DeskSheet
      person={person}
      at={programmesAddress()}
      title="Programmes"
      supplement={person.auditor ? 'All programmes' : 'Those you belong to'}
      cells={[{ label: 'Found', value: found }]}
    >
      <form method="get" role="search" className="form-row" aria-label="Find a programme">
        <TextField name="text" type="search" label="Code or title" defaultValue={text} />
        <Button type="submit">Find</Button>
      </form>
      {programmes.length > 0 ? (
        <RuledTable
          caption="Programmes"
          captionHidden
          rows={programmes}
          rowKey={({ state }) => state.programme.id}
          columns={COLUMNS}
        />
      ) : (
        <Empty title={text ? 'None found' : 'No programme yet'}>
          {text ? 'Look for other words.' : 'Open one, or ask a programme’s lead to invite you.'}
        </Empty>
      )}
      <Pagination
        label="Pages of programmes"
        page={page}
        pages={Math.ceil(found / PROGRAMMES_A_PAGE)}
        addressOf={(to) => `${programmesAddress()}?${new URLSearchParams({ text, page: String(to) })}`}
      />
      {mayOpen && (
        <p className="form-actions">
          <ButtonLink href={newProgrammeAddress()}>Open a programme</ButtonLink>
        </p>
      )}
      <TourOffer />
    </DeskSheet>
  )
}

const COLUMNS: Column<JudgedProgramme>[] = [
  { label: 'Code', set: 'shrink', cell: ({ state }) => state.programme.code },
  {
    label: 'Programme',
    names: true,
    cell: ({ state }) => <a href={routeCardAddress(state.programme.code)}>{state.programme.title}</a>,
  },
  { label: 'Status', cell: ({ judgement }) => statusOf(judgement) },
  ...STAGES.map((stage): Column<JudgedProgramme> => ({
    label: `${STAGE_NAMES[stage]} gate`,
    set: 'shrink',
    cell: ({ judgement }) => (
      <GateMark status={judgement.gates.find((gate) => gate.stage === stage)?.status ?? 'blocked'} />
    ),
  })),
]
