import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { recordAddress, trainedPersonAddress, worksPeopleAddress } from '@/app/addresses'
import { WorksSheet } from '@/app/works/works-sheet'
import { requirePerson } from '@/app/frame/visit'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { CorrectRecord } from '@/app/records/correct-record'
import { WithdrawRecord } from '@/app/records/withdraw-record'
import { Facts } from '@/app/ui/facts'
import { CellValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { worksActor } from '@/lib/auth/works-actor'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { readCertificates, readTraining } from '@/lib/queries/people-of-the-works'
import { refusal } from '@/shared/policy'
import type { Column } from '@/shared/columns/column'
import { fieldsCorrected } from '@/shared/records/correction'
import { training } from '@/shared/records/kinds/training'
import { skillName } from '@/shared/training/training-matrix'
import { PEOPLE_OF_THE_WORKS } from '../../people-of-the-works'
import { Certificates } from './certificates'

export const metadata = { title: 'One training – Liquidus' }

interface TrainingPageProps {
  params: Promise<{ person: string; record: string }>
  searchParams: Promise<{ upload?: string }>
}

/** One examination passed: its values, its certificates, and the forms to correct or withdraw it. */
export default async function TrainingPage({ params, searchParams }: TrainingPageProps) {
  const { person: asked, record: id } = await params
  const visitor = await requirePerson(trainedPersonAddress(addressPart(asked), id))
  const found = (await readTraining()).find((one) => one.id === id && one.withdrawn === null)
  if (!found) notFound()
  const { worker, skill, corrections, recordedIn } = found
  const { upload } = await searchParams
  const values: Readonly<Record<string, unknown>> = { ...found }
  const actor = worksActor(visitor)
  const atWorks = recordedIn.kind === 'people'
  return (
    <WorksSheet
      person={visitor}
      at={worksPeopleAddress()}
      title={`${worker}: ${skillName(skill).toLowerCase()}`}
      supplement="One examination passed"
      place={[
        { text: 'People of the works', href: worksPeopleAddress() },
        { text: worker, href: trainedPersonAddress(worker) },
        { text: skillName(skill) },
      ]}
      cells={[{ label: 'Corrected', value: corrections.length }]}
    >
      <Facts
        facts={Object.entries<Column>(training.columns).map(([name, column]) => ({
          label: column.label,
          value: <CellValue column={column} value={values[name]} />,
        }))}
      />
      <Certificates
        worker={worker}
        record={id}
        certificates={await readCertificates([id])}
        refused={refusal('attach-certificate', actor)}
        answer={upload ? openUploadAnswer(upload, uploadSecret()) : {}}
      />
      {!atWorks && (
        <p>
          It was recorded in a programme of an earlier version, and is{' '}
          <a href={recordAddress(recordedIn.code, training.key, id)}>
            corrected or withdrawn in {recordedIn.code}
          </a>
          .
        </p>
      )}
      {atWorks && !refusal('correct-record', actor, training) && (
        <CorrectRecord
          kind={training}
          of={PEOPLE_OF_THE_WORKS}
          record={id}
          seen={corrections.length}
          values={values}
          previewed
        />
      )}
      {atWorks && !refusal('withdraw-record', actor, training) && (
        <WithdrawRecord of={PEOPLE_OF_THE_WORKS} record={id} previewed />
      )}
      {corrections.length > 0 && (
        <Section heading="Corrections">
          <CorrectionsShown
            of="this training"
            corrections={corrections}
            fieldsOf={(before, after) => fieldsCorrected(training.columns, before, after)}
          />
        </Section>
      )}
    </WorksSheet>
  )
}
