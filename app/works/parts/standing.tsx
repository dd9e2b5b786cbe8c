import { Sign, type SignKind } from '@/app/ui/sign'
import type { PartStanding } from '@/lib/queries/works/parts'

const SIGNS: Readonly<Record<PartStanding, SignKind | undefined>> = {
  approved: undefined,
  'not approved': 'warning',
  withdrawn: 'refusal',
}

/** How a part stands; what needs somebody is set apart by a sign and by weight. */
export function Standing({ standing }: { standing: PartStanding }) {
  const sign = SIGNS[standing]
  if (!sign) return <>{standing}</>
  return (
    <span className="mark">
      <Sign kind={sign} size={16} />
      <strong>{standing}</strong>
    </span>
  )
}
