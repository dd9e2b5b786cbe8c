import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { gateAddress, routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Digest } from '@/app/ui/digest'
import { GateMark } from '@/app/ui/gate-mark'
import { STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { Blockers } from './blockers'
import { Covered } from './covered'
import { Signatures } from './signatures'

export const generateMetadata = programmeTitle<{ stage: string }>(
  ({ code, stage }) => `${isStage(stage) ? STAGE_NAMES[stage] : 'Stage'} gate, ${code}`,
)

/** The end of a stage: what blocks it, what a signature covers, and the signatures. */
export default programmePage<{ stage: string }>(async ({ visit, code: programme, params: { stage } }) => {
  if (!isStage(stage)) notFound()
  const gate = visit.view.judgement.gates.find((entry) => entry.stage === stage)
  const title = `${STAGE_NAMES[stage]} gate`
  return (
    <ProgrammeSheet
      visit={visit}
      code={programme}
      at={routeCardAddress(programme)}
      place={[{ text: title, href: gateAddress(programme, stage) }]}
      title={title}
      supplement={visit.view.state.programme.title}
      cells={
        gate
          ? [
              { label: 'Status', value: <GateMark status={gate.status} /> },
              { label: 'Content hash', value: <Digest value={gate.digest} length={16} /> },
            ]
          : []
      }
    >
      {(view) =>
        gate && (
          <>
            <Blockers code={view.code} gate={gate} items={view.judgement.items} />
            <Signatures
              view={view}
              gate={gate}
              hasPassword={visit.person.hasPassword}
              formKey={randomUUID()}
            />
            <Covered view={view} stage={stage} />
          </>
        )
      }
    </ProgrammeSheet>
  )
})

const isStage = (text: string): text is Stage => (STAGES as readonly string[]).includes(text)
