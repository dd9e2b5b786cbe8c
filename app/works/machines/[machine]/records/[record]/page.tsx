import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { machineAddress, machineLogAddress, machineRecordAddress, worksAddress } from '@/app/addresses'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { CorrectRecord } from '@/app/records/correct-record'
import { WithdrawRecord } from '@/app/records/withdraw-record'
import { Day } from '@/app/ui/date'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { CellValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { isUuid } from '@/lib/queries/from-address'
import { readMachineRecord } from '@/lib/queries/works/machine-records'
import { ownMember } from '@/shared/own-member'
import { refusal } from '@/shared/policy'
import { capitalised } from '@/shared/quantity/capitalised'
import { fieldsCorrected } from '@/shared/records/correction'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { visitWorks } from '../../../../visit-works'
import { WorksSheet } from '../../../../works-sheet'

export const metadata = { title: 'One record of a machine – Liquidus' }

interface MachineRecordPageProps {
  params: Promise<{ machine: string; record: string }>
}

/** Something recorded of a machine's log: as it stands, and the forms to correct or withdraw it. */
export default async function MachineRecordPage({ params }: MachineRecordPageProps) {
  const { machine: code, record: id } = await params
  const machine = addressPart(code)
  const { person, actor } = await visitWorks(machineRecordAddress(machine, id))
  const record = isUuid(id) ? await readMachineRecord(machine, id) : undefined
  const kind: RecordKind | undefined = record && ownMember(RECORD_KINDS, record.kind)
  if (!record || !kind) notFound()
  const { values, history } = record
  const log = String(values['log'])
  const of = { 'works.kind': 'machine', 'works.code': machine }
  const stands = history.withdrawn === null
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title={capitalised(kind.label)}
      supplement={kind.help}
      place={[
        { text: machine, href: machineAddress(machine) },
        { text: log, href: machineLogAddress(machine, log) },
        { text: 'One record' },
      ]}
      cells={[
        { label: 'Recorded by', value: history.recorded.by },
        { label: 'Corrected', value: history.corrections.length },
      ]}
    >
      {history.withdrawn && (
        <Notice kind="info" title="Withdrawn">
          On <Day at={history.withdrawn.at} />: {history.withdrawn.why}
        </Notice>
      )}
      <Facts
        facts={Object.entries(kind.columns).map(([name, column]) => ({
          label: column.label,
          value: <CellValue column={column} value={values[name]} />,
        }))}
      />
      {stands && !refusal('correct-record', actor, kind) && (
        <CorrectRecord
          kind={kind}
          of={of}
          record={id}
          seen={history.corrections.length}
          values={values}
          previewed
        />
      )}
      {stands && !refusal('withdraw-record', actor, kind) && <WithdrawRecord of={of} record={id} previewed />}
      {history.corrections.length > 0 && (
        <Section heading="Corrections">
          <CorrectionsShown
            of={`this ${kind.label}`}
            corrections={history.corrections}
            fieldsOf={(before, after) => fieldsCorrected(kind.columns, before, after)}
          />
        </Section>
      )}
    </WorksSheet>
  )
}
