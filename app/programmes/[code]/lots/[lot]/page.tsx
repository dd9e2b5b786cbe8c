import { addressPart } from '@/app/address-part'
import { dispositionInWords } from '@/shared/records/lot-identity'
import { notFound } from 'next/navigation'
import { lotsAddress } from '@/app/addresses'
import { NonconformitiesFrom } from '@/app/deliberation/open-nonconformity-from'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { correctionsOf } from '@/lib/queries/corrections'
import { partsOfLot, verdictOfLot } from '../lot-parts'
import { CorrectLot } from '@/app/lots/correct-lot'
import { Disposition } from '@/app/lots/disposition'
import { NewTest } from '@/app/lots/new-test'
import { lotInProgramme } from './lot-in-programme'
import { AtTheWorks } from './at-the-works'
import { LotFindings } from './lot-findings'
import { LotTests } from './lot-tests'
import { PlatingCapabilityDrawn } from './plating-capability-drawn'
import { LeadInProgramme } from './lead-in-programme'
import { Sampling } from './sampling'
import { Traced } from './traced'
import { WhatStands } from './what-stands'

export const generateMetadata = programmeTitle<{ lot: string }>(({ lot }) => `Lot ${lot}`)

/** One lot: what it is, how it is sampled, how it was tested, what it proves, and what becomes of it. */
export default programmePage<{ lot: string }>(
  async ({ visit, code, params: { lot: key }, searchParams: given }) => {
    const lot = visit.view.state.facts.records.lots.find((entry) => entry.code === addressPart(key))
    if (!lot) notFound()
    const parts = partsOfLot(visit.view, lot)
    const corrections = await correctionsOf([lot.id, ...lot.tests.map(({ id }) => id)])
    const verdict = verdictOfLot(parts)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={lotsAddress(code)}
        place={[{ text: 'Lots', href: lotsAddress(code) }, { text: lot.code }]}
        title={`Lot ${lot.code}`}
        supplement={`${lot.part}, ${lot.kind}`}
        cells={[
          { label: 'Supplier', value: lot.supplier },
          { label: 'Date code', value: lot.dateCode || 'none' },
          { label: 'Quantity', value: lot.quantity },
          { label: 'Received', value: <Day at={lot.receivedOn} /> },
          {
            label: 'Store',
            value: `${lot.storage.temperatureC} °C, ${lot.storage.relativeHumidityPct} % RH, ${lot.storage.packing}`,
          },
          { label: 'Findings', value: verdict ? <VerdictMark verdict={verdict} /> : 'none' },
          { label: 'Disposition', value: dispositionInWords(lot) },
        ]}
      >
        {(view) => {
          const at = lotInProgramme(view, lot)
          return (
            <>
              <LeadInProgramme view={view} lot={lot} />
              <WhatStands view={view} lot={lot} parts={parts} />
              {lot.atWorks && <AtTheWorks lot={lot} at={lot.atWorks} />}
              <Sampling view={view} lot={lot} />
              <LotFindings view={view} parts={parts} />
              <LotTests view={view} lot={lot} at={at} corrections={corrections} />
              <PlatingCapabilityDrawn view={view} lot={lot} />
              {at && <NewTest at={at} lot={lot} given={given} />}
              {at && <Disposition at={at} lot={lot} />}
              <Traced view={view} lot={lot} />
              {at && <CorrectLot at={at} lot={lot} corrections={corrections.get(lot.id) ?? []} />}
              <NonconformitiesFrom view={view} source={{ kind: 'lot', key: lot.code }} />
            </>
          )
        }}
      </ProgrammeSheet>
    )
  },
)
