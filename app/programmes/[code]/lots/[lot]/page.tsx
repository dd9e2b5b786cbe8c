import { notFound } from 'next/navigation'
import { lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import { samplingOfLot } from '@/shared/rules/evaluation/sampling-of-lot'
import { Disposition } from './disposition'
import { LotFindings } from './lot-findings'
import { LotTests } from './lot-tests'
import { NewTest } from './new-test'
import { Traced } from './traced'

interface LotPageProps {
  params: Promise<{ code: string; lot: string }>
  searchParams: Promise<{ method?: string; refused?: string }>
}

/** One lot: what it is, how it is sampled, what was tried on it, what it proves, and what becomes of it. */
export default async function LotPage({ params, searchParams }: LotPageProps) {
  const { code: asked, lot: key } = await params
  const { method, refused } = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const lot = visit.view?.state.facts.records.lots.find((entry) => entry.code === decodeURIComponent(key))
  if (visit.view && !lot) notFound()
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[{ text: 'Lots', href: lotsAddress(code) }, { text: lot?.code ?? key }]}
      title={`Lot ${lot?.code ?? key}`}
      supplement={lot && `${lot.part}, ${lot.kind}`}
      cells={
        lot
          ? [
              { label: 'Supplier', value: lot.supplier },
              { label: 'Date code', value: lot.dateCode || 'none' },
              { label: 'Quantity', value: lot.quantity },
              { label: 'Received', value: <Day at={lot.receivedOn} /> },
              { label: 'Disposition', value: lot.disposition?.verdict ?? 'waits' },
            ]
          : []
      }
    >
      {(view) =>
        lot && (
          <>
            <Facts
              facts={[
                {
                  label: 'Store',
                  value: `${lot.storage.temperatureC} °C, ${lot.storage.relativeHumidityPct} % RH, ${lot.storage.packing}`,
                },
                { label: 'Supplier’s own result', value: lot.supplierResult || 'none came with the lot' },
              ]}
            />
            <Section heading="Sampling">
              {samplingOfLot(view.state.facts, lot).map((sampling) => (
                <Facts
                  key={sampling.method}
                  facts={[
                    { label: 'Test', value: sampling.label },
                    { label: 'Plan', value: sampling.planSays },
                    { label: 'Risk', value: sampling.riskSays },
                    { label: 'What the sample proves', value: sampling.proofSays ?? 'nothing yet' },
                  ]}
                />
              ))}
            </Section>
            <LotFindings view={view} lot={lot} />
            <LotTests view={view} lot={lot} />
            <NewTest view={view} lot={lot} method={method} refused={refused} />
            <Disposition view={view} lot={lot} />
            <Traced view={view} lot={lot} />
          </>
        )
      }
    </ProgrammeSheet>
  )
}
