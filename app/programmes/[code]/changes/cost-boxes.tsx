import { NumberBox } from '@/app/forms/fields'
import type { NoticeCost } from '@/shared/commands/changes/cost-in-words'

/** What a notice costs, per board and once; empty where nobody knows. */
export const CostBoxes = ({ costPerBoard = null, costOnce = null }: Partial<NoticeCost>) => (
  <>
    <NumberBox
      name="costPerBoard"
      label="Cost per board"
      hint="More is positive, a saving negative. Left empty it is shown as unknown."
      defaultValue={costPerBoard ?? undefined}
      optional
    />
    <NumberBox name="costOnce" label="Cost once" defaultValue={costOnce ?? undefined} optional />
  </>
)
