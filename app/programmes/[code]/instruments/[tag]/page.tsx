import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { gaugesAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { instrumentUses } from '@/shared/instruments/instrument-uses'
import { studiedGauges } from '@/shared/instruments/gauge-study'
import { GaugeStudySheet } from './gauge-study-sheet'
import { RecordStudy } from './record-study'
import { WhereUsed } from './where-used'
import { recordsOfKind } from '@/shared/records/records-of-kind'

export const generateMetadata = programmeTitle<{ tag: string }>(({ tag }) => `Instrument ${tag}`)

/** One instrument in a programme: its calibration, its gauge studies, and what rests on it. */
export default programmePage<{ tag: string }>(async ({ visit, code, params: { tag: key } }) => {
  const tag = addressPart(key)
  const records = visit.view.state.facts.records
  const instrument = records.instruments.find((one) => one.tag === tag)
  if (!instrument) notFound()
  const uses = instrumentUses(records).find((one) => one.instrument.tag === tag)
  const readings = recordsOfKind(records, 'gauge-reading')
  const studies = studiedGauges(readings).filter(({ instrumentTag }) => instrumentTag === tag)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: 'Instruments in use', href: gaugesAddress(code) },
        { text: tag },
      ]}
      title={`Instrument ${tag}`}
      supplement={instrument.measures}
      cells={[
        { label: 'Calibrated', value: <Day at={instrument.calibratedOn} /> },
        { label: 'Due', value: <Day at={instrument.dueOn} /> },
        { label: 'Certificate', value: instrument.certificate },
        { label: 'Gauge studies', value: studies.length },
      ]}
    >
      {(view) => (
        <>
          {studies.map((study) => (
            <GaugeStudySheet key={study.study} view={view} studied={study} />
          ))}
          <WhereUsed view={view} uses={uses} />
          <RecordStudy view={view} tag={tag} />
        </>
      )}
    </ProgrammeSheet>
  )
})
