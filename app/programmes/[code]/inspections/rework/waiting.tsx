import { randomUUID } from 'node:crypto'
import { benchAddress, inspectionAddress, newNonconformityAddress, reworkAddress } from '@/app/addresses'
import { PictureForm } from '@/app/deliberation/picture-form'
import { PictureList } from '@/app/deliberation/picture-list'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Notice } from '@/app/ui/notice'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { Picture } from '@/lib/queries/pictures'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { keyOfJoint } from '@/shared/inspection/rework-summary'
import { reworkWaitingIn, type JointInRework } from '@/shared/inspection/rework-waiting'
import { partRefusal, refusal } from '@/shared/policy'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { jointKey } from '@/shared/reviews/subject'
import { AgainForm, ReworkForm } from './bench-forms'

interface WaitingProps {
  view: ProgrammeView
  pictures: readonly Picture[]
  /** The joint whose form stands open, as its key. */
  joint: string | undefined
  refusedPicture: string | undefined
}

const SHOWN = 100

/** Joints that wait for the iron, and joints that wait to be looked at again; each with its form filled in. */
export function Waiting({ view, pictures, joint, refusedPicture }: WaitingProps) {
  const { forRework, forInspection } = reworkWaitingIn(view.state.facts.records)
  const open = [...forRework, ...forInspection].find((one) => jointKey(one.assembly, one.joint) === joint)
  const mayRework = !refusal('add-record', view.actor, RECORD_KINDS.rework)
  const mayLook = !refusal('add-record', view.actor, RECORD_KINDS['re-inspection'])
  return (
    <>
      {refusedPicture && (
        <Notice kind="refusal" announced title="The picture was not attached">
          {refusedPicture}
        </Notice>
      )}
      <Section
        id="waiting"
        heading="Waiting for rework"
        lead="Defects found at inspection or by electrical test, until their rework is recorded."
      >
        {forRework.length === 0 ? (
          <Empty title="No joint waits for rework">
            <FirstStep
              first="A joint comes here once an inspection or an electrical test finds it at fault."
              refused={refusal('record-inspection', view.actor)}
              href={benchAddress(view.code)}
              does="Inspect at the bench"
            />
          </Empty>
        ) : (
          <Joints
            {...{ view, pictures, caption: 'Joints waiting for rework', joints: forRework }}
            does={mayRework ? 'Record the rework' : undefined}
          />
        )}
        {open && !open.reworked && mayRework && <ReworkForm view={view} joint={open} />}
      </Section>
      {(forInspection.length > 0 || joint) && (
        <Section
          id="again"
          heading="Waiting for re-inspection"
          lead="Reworked; each waits for a look that names the joint. A joint still at fault goes back to the list above."
        >
          {forInspection.length === 0 ? (
            <Empty title="No joint waits for re-inspection">
              <FirstStep
                first="First record the rework of a joint that waits above."
                refused={refusal('add-record', view.actor, RECORD_KINDS.rework)}
              />
            </Empty>
          ) : (
            <Joints
              {...{ view, pictures, caption: 'Joints waiting for re-inspection', joints: forInspection }}
              does={mayLook ? 'Record the re-inspection' : undefined}
            />
          )}
          {open?.reworked && mayLook && <AgainForm view={view} joint={open} />}
        </Section>
      )}
    </>
  )
}

interface JointsProps {
  view: ProgrammeView
  caption: string
  joints: readonly JointInRework[]
  pictures: readonly Picture[]
  /** What leads to the form; undefined for those who may not. */
  does: string | undefined
}

function Joints({ view, caption, joints, pictures, does }: JointsProps) {
  const columns: Column<JointInRework>[] = [
    { label: 'Joint', names: true, cell: ({ joint }) => joint },
    { label: 'Assembly', cell: ({ assembly }) => assembly },
    {
      label: 'Found',
      cell: ({ kinds, note, foundOn, foundBy, inspection }) => (
        <>
          {kinds.join(', ')}
          {note && `: ${note}`}
          <span className="block faint">
            {foundBy},{' '}
            {inspection ? <a href={inspectionAddress(view.code, inspection)}>{foundOn}</a> : foundOn}
          </span>
        </>
      ),
    },
    {
      label: 'Picture',
      cell: (one) => <PicturesOf view={view} joint={one} pictures={pictures} />,
    },
    {
      label: 'Reworked',
      cell: ({ reworked }) =>
        reworked ? (
          <>
            {reworked.by}, <Day at={reworked.on} />
          </>
        ) : (
          'not yet'
        ),
    },
    {
      label: 'Next',
      cell: ({ assembly, joint, reworked }) => (
        <span className="print-hidden">
          {does && (
            <a
              className="block"
              href={`${reworkAddress(view.code)}?${new URLSearchParams({ joint: jointKey(assembly, joint) })}#${reworked ? 'again' : 'waiting'}`}
            >
              {does}
              <span className="sr-only">
                {' '}
                of {joint} on {assembly}
              </span>
            </a>
          )}
          {!refusal('open-nonconformity', view.actor) && (
            <a href={newNonconformityAddress(view.code, `joint:${jointKey(assembly, joint)}`)}>
              Open a nonconformity
            </a>
          )}
        </span>
      ),
    },
  ]
  const more = joints.length - SHOWN
  return (
    <>
      <RuledTable
        caption={caption}
        captionHidden
        rows={joints.slice(0, SHOWN)}
        rowKey={({ assembly, joint }) => keyOfJoint(assembly, joint)}
        columns={columns.filter(
          ({ label }) => label !== 'Reworked' || joints.some(({ reworked }) => reworked),
        )}
      />
      {more > 0 && <p className="field-hint">And {more} more, once these are done.</p>}
    </>
  )
}

function PicturesOf({
  view,
  joint: { assembly, joint },
  pictures,
}: {
  view: ProgrammeView
  joint: JointInRework
  pictures: readonly Picture[]
}) {
  const own = pictures.filter(
    ({ about }) =>
      about.kind === 'joint' && keyOfJoint(about.assembly, about.joint) === keyOfJoint(assembly, joint),
  )
  return (
    <>
      {own.length > 0 && <PictureList view={view} pictures={own} />}
      {!partRefusal('attach-picture', view.actor) && (
        <Disclosure summary="Add one" printed={false}>
          <PictureForm
            code={view.code}
            formKey={randomUUID()}
            about={{ about: 'joint', assembly, joint }}
            label={`Attach a picture of ${joint} on ${assembly}`}
          />
        </Disclosure>
      )}
    </>
  )
}
