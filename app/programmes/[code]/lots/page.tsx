import { lotsAddress, samplingAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Button, ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { refusal } from '@/shared/policy'
import { LotTable } from './lot-table'
import { ReceiveForm } from './receive-form'

interface LotsPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<{ assembly?: string }>
}

export async function generateMetadata({ params }: LotsPageProps) {
  return { title: `Lots, ${decodeURIComponent((await params).code)} – Liquidus` }
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
      supplement="What is bought in, shown to meet the specification before it is soldered"
      cells={[
        { label: 'Lots', value: all.length },
        { label: 'Not yet disposed of', value: all.filter(({ disposition }) => !disposition).length },
      ]}
    >
      {(view) => {
        const may = !refusal('receive-lot', view.actor)
        return (
          <>
            <p className="form-actions">
              {may && <ButtonLink href="#receive">Receive a lot</ButtonLink>}
              <ButtonLink href={samplingAddress(code)}>Plan a sample</ButtonLink>
            </p>
            {assembly && <h2>{`Lots in assembly ${assembly}`}</h2>}
            {lots.length > 0 ? (
              <LotTable view={view} lots={lots} />
            ) : (
              <Empty title={assembly ? `No lot is recorded for ${assembly}` : 'No lots yet'}>
                {assembly ? (
                  <a href={lotsAddress(code)}>All lots</a>
                ) : (
                  'Every delivery of laminate, boards, coupons, components and consumables is a lot.'
                )}
              </Empty>
            )}
            {all.length > 0 && (
              <form
                method="get"
                role="search"
                className="form-row"
                aria-label="Which lots went into an assembly"
              >
                <TextField
                  name="assembly"
                  type="search"
                  label="Which lots went into the assembly"
                  hint="Its serial number."
                  defaultValue={assembly}
                />
                <Button type="submit">Look up</Button>
              </form>
            )}
            {may && <ReceiveForm view={view} />}
          </>
        )
      }}
    </ProgrammeSheet>
  )
}
