import { notFound } from 'next/navigation'
import type { ReactNode } from 'react'
import { gateAddress, itemAddress, trailAddress, trailEntryAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { ResetNote } from '@/app/frame/reset-note'
import type { Visit } from '@/app/frame/visit'
import { Moment } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import { sealToday } from '@/lib/queries/gate-seal'
import { entriesHolding } from '@/lib/queries/origins'
import { itemStateFor } from '@/shared/gate/judgement'
import type { ApprovalEntry, GateSignatureEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { recordedKey } from '@/shared/why/step'
import { approvalThenAndNow, gateThenAndNow, type CoveredThing } from '@/shared/why/then-and-now'
import { CoveredTable } from './covered-table'

/** What an approval covered when it was given, and what each of it is today. */
export async function ApprovalWhy({ visit, id }: { visit: Visit; id: string }) {
  const { view } = visit
  const approval = view.state.approvals.find((entry) => entry.id === id)
  const item = approval && itemStateFor(view.judgement, approval.itemKey)
  if (!approval || !item) notFound()
  const { title } = item.item.definition
  return (
    <SignatureSheet
      visit={visit}
      signature={approval}
      title={`Approval of ${title} for ${DEPARTMENT_NAMES[approval.department]}`}
      place={{ text: title, href: itemAddress(view.code, approval.itemKey) }}
      covered={approvalThenAndNow(approval, item)}
    />
  )
}

/** What a gate's signature covered, and whether the trail it sealed is still the same. */
export async function GateWhy({ visit, id }: { visit: Visit; id: string }) {
  const { view } = visit
  const signature = view.state.gateSignatures.find((entry) => entry.id === id)
  if (!signature) notFound()
  const gate = `${STAGE_NAMES[signature.stage]} gate`
  const seal = await sealToday(view.state.programme.id, signature)
  return (
    <SignatureSheet
      visit={visit}
      signature={signature}
      title={`${gate}, signed for ${DEPARTMENT_NAMES[signature.department]}`}
      place={{ text: gate, href: gateAddress(view.code, signature.stage) }}
      covered={gateThenAndNow(signature, view.state, view.judgement)}
    >
      <Section
        heading="The trail it sealed"
        lead={`The ${signature.trailSeq} entries before it. Their newest hash and Merkle root are worked out anew from the hashes that are stored; the whole proof is on the page of the trail.`}
      >
        <Facts
          facts={[
            { label: 'Newest hash', value: <Sealed then={signature.headHash} now={seal.headHash} /> },
            { label: 'Merkle root', value: <Sealed then={signature.merkleRoot} now={seal.merkleRoot} /> },
          ]}
        />
      </Section>
    </SignatureSheet>
  )
}

function Sealed({ then, now }: { then: string; now: string }) {
  return (
    <>
      <Digest value={then} full />{' '}
      {then === now ? 'the same today' : <strong className="ink-carmine">another today: {now}</strong>}
    </>
  )
}

interface SignatureSheetProps {
  visit: Visit
  signature: ApprovalEntry | GateSignatureEntry
  title: string
  place: { readonly text: string; readonly href: string }
  covered: readonly CoveredThing[]
  children?: ReactNode
}

async function SignatureSheet({ visit, signature, title, place, covered, children }: SignatureSheetProps) {
  const { code, state } = visit.view
  const recorded = { at: signature.at, name: signature.id }
  const entries = (await entriesHolding(state.programme.id, [recorded])).get(recordedKey(recorded)) ?? []
  const changed = covered.filter(({ same }) => !same).length
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={trailAddress(code)}
      place={[place, { text: 'What a signature covered' }]}
      title={title}
      supplement={
        changed === 0 ? 'All that it covered is as it was' : `Changed since: ${changed} of ${covered.length}`
      }
      cells={[
        { label: 'Signed by', value: signature.personName },
        { label: 'When', value: <Moment at={signature.at} /> },
      ]}
    >
      {() => (
        <>
          <Section
            heading="What it covered"
            lead={
              <>
                The digest is the SHA-256 of all of it as canonical JSON:{' '}
                <Digest value={signature.digest} full />.{' '}
                {entries.map((seq) => (
                  <a key={seq} href={trailEntryAddress(code, seq)}>
                    Entry {seq} of the trail
                  </a>
                ))}
              </>
            }
          >
            <ResetNote personId={signature.personId} at={signature.at} />
            <CoveredTable code={code} covered={covered} />
          </Section>
          {children}
        </>
      )}
    </ProgrammeSheet>
  )
}
