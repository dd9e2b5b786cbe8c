import { routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { RouteCard } from './route-card'

interface RouteCardPageProps {
  params: Promise<{ code: string }>
}

export async function generateMetadata({ params }: RouteCardPageProps) {
  return { title: `${decodeURIComponent((await params).code)} – Liquidus` }
}

/** A programme on one sheet: the four stages, what stands in them, and their gates. */
export default async function RouteCardPage({ params }: RouteCardPageProps) {
  const { code } = await params
  const visit = await visitProgramme(code)
  const { view } = visit
  const programme = view?.state.programme
  const lead = view?.state.members.find(({ personId }) => personId === programme?.leadId)
  return (
    <ProgrammeSheet
      visit={visit}
      code={view?.code ?? decodeURIComponent(code)}
      at={routeCardAddress(view?.code ?? code)}
      title={programme?.title ?? ''}
      supplement="Route card"
      cells={[
        { label: 'Programme', value: programme?.code },
        { label: 'Lead', value: lead?.name ?? '' },
        { label: 'Status', value: statusOf(view) },
      ]}
    >
      {(readable) => <RouteCard view={readable} />}
    </ProgrammeSheet>
  )
}

function statusOf(view: Awaited<ReturnType<typeof visitProgramme>>['view']): string {
  if (!view) return ''
  const lost = view.judgement.gates.filter(({ standing }) => standing === 'no longer standing')
  if (lost.length > 0) return `${lost.length === 1 ? 'A gate' : `${lost.length} gates`} to be signed again`
  if (view.judgement.inService) return 'In service'
  const next = view.judgement.gates.find(({ standing }) => standing !== 'open')
  return next ? `In ${next.stage}` : ''
}
