import { randomUUID } from 'node:crypto'
import { lotAddress, lotsAddress, samplingAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { Button } from '@/app/ui/button'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { LOT_KINDS, type Lot } from '@/shared/records/lot'
import { methodName } from '@/shared/records/test-methods'
import { receiveLot } from './actions'

interface LotsPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<{ assembly?: string }>
}

/** Delivered batches: what was tried on them, what was decided, and where they went. */
export default async function LotsPage({ params, searchParams }: LotsPageProps) {
  const { code: asked } = await params
  const assembly = String((await searchParams).assembly ?? '').trim()
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const all = visit.view?.state.facts.records.lots ?? []
  const lots = assembly ? all.filter(({ usedIn }) => usedIn.includes(assembly)) : all
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[{ text: 'Lots' }]}
      title="Lots"
      supplement={
        <>
          What is bought in, shown to meet the specification before it is soldered.{' '}
          <a href={samplingAddress(code)}>Sampling planner</a>
        </>
      }
      cells={[
        { label: 'Lots', value: all.length },
        { label: 'Not yet disposed of', value: all.filter(({ disposition }) => !disposition).length },
      ]}
    >
      {(view) => (
        <>
          <form method="get" role="search" className="form-row" aria-label="Which lots went into an assembly">
            <TextField
              name="assembly"
              type="search"
              label="Lots that went into the assembly"
              defaultValue={assembly}
            />
            <Button type="submit">Look up</Button>
          </form>
          {lots.length > 0 ? (
            <LotTable view={view} lots={lots} />
          ) : (
            <Empty title={assembly ? `No lot is recorded for ${assembly}` : 'No lots yet'}>
              Every delivery of laminate, boards, coupons, components and consumables is a lot.
            </Empty>
          )}
          {!refusal('receive-lot', view.actor) && <ReceiveForm view={view} />}
        </>
      )}
    </ProgrammeSheet>
  )
}

function LotTable({ view, lots }: { view: ProgrammeView; lots: readonly Lot[] }) {
  return (
    <RuledTable
      caption="Lots"
      captionHidden
      rows={[...lots].reverse()}
      rowKey={({ id }) => id}
      columns={[
        { label: 'Lot', names: true, cell: ({ code }) => <a href={lotAddress(view.code, code)}>{code}</a> },
        { label: 'Part', cell: ({ part, kind }) => `${part} (${kind})` },
        { label: 'Supplier', cell: ({ supplier }) => supplier },
        { label: 'Quantity', set: 'number', cell: ({ quantity }) => quantity },
        { label: 'Received', set: 'shrink', cell: ({ receivedOn }) => <Day at={receivedOn} /> },
        {
          label: 'Tests',
          cell: ({ tests }) => tests.map(({ method }) => methodName(method)).join(', ') || 'none yet',
        },
        { label: 'Disposition', set: 'shrink', cell: ({ disposition }) => disposition?.verdict ?? 'waits' },
      ]}
    />
  )
}

function ReceiveForm({ view }: { view: ProgrammeView }) {
  return (
    <Section heading="Receive a lot">
      <Disclosure summary="Record a delivery" printed={false}>
        <CommandForm
          action={receiveLot}
          formKey={randomUUID()}
          hidden={{ programme: view.code }}
          label="Receive a lot"
          className="form-narrow"
        >
          <TextBox name="code" label="Lot code" required />
          <ChoiceBox
            name="kind"
            label="Kind"
            choices={[{ value: '', text: 'Choose …' }, ...LOT_KINDS.map((value) => ({ value, text: value }))]}
          />
          <TextBox name="part" label="What it is" hint="As in the list of parts to be evaluated." required />
          <TextBox name="supplier" label="Supplier" required />
          <TextBox name="dateCode" label="Date code" optional />
          <NumberBox name="quantity" label="Quantity" unit="pieces" required />
          <TextBox
            name="receivedOn"
            type="date"
            label="Received on"
            defaultValue={view.state.facts.today}
            required
          />
          <NumberBox name="temperatureC" label="Store temperature" unit="°C" required />
          <NumberBox name="relativeHumidityPct" label="Store humidity" unit="% RH" required />
          <TextBox name="packing" label="Packing" required />
          <LinesBox
            name="supplierResult"
            label="Supplier’s own result"
            hint="As stated; it is reaffirmed by a test here."
            rows={2}
            optional
          />
          <SubmitButton>Receive the lot</SubmitButton>
        </CommandForm>
      </Disclosure>
    </Section>
  )
}
