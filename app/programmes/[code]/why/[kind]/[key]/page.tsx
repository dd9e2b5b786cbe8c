import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { findingAddress, limitAddress, parameterAddress, trailAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Section } from '@/app/ui/section'
import { entriesHolding } from '@/lib/queries/origins'
import { recordedIn } from '@/shared/why/step'
import { whyFinding, whyLimit, whyValue } from '../../asked-why'
import { ApprovalWhy, GateWhy } from '../../signature-why'
import { Steps } from '../../steps'

interface WhyPageProps {
  params: Promise<{ code: string; kind: string; key: string }>
}

/** Why something is so: the walk back from a finding, a value, a limit or a signature to who stated what, and when. */
export default async function WhyPage({ params }: WhyPageProps) {
  const { code: asked, kind, key: given } = await params
  const visit = await visitProgramme(asked)
  const key = addressPart(given)
  if (kind === 'approval') return <ApprovalWhy visit={visit} id={key} />
  if (kind === 'gate') return <GateWhy visit={visit} id={key} />
  const chain = await CHAINS[kind]?.ask(visit.view, key)
  if (!chain) notFound()
  const { code, state } = visit.view
  const entries = await entriesHolding(state.programme.id, recordedIn(chain.steps))
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={trailAddress(code)}
      place={[{ text: chain.title, href: CHAINS[kind]!.address(code, key) }, { text: 'Why it is so' }]}
      title={`Why: ${chain.title}`}
      supplement="From what stands today back to who stated it, when, and on what"
    >
      {() => (
        <Section
          heading="The chain"
          lead="Under each thing stands what it rests on. Nothing of this page is stored: it is read from the facts as they stand, and each leads to its entry in the trail."
        >
          <Steps code={code} steps={chain.steps} entries={entries} />
        </Section>
      )}
    </ProgrammeSheet>
  )
}

const CHAINS: Readonly<
  Record<string, { ask: typeof whyFinding; address: typeof findingAddress } | undefined>
> = {
  finding: { ask: whyFinding, address: findingAddress },
  value: { ask: whyValue, address: parameterAddress },
  limit: { ask: whyLimit, address: limitAddress },
}
