import { database } from '@/lib/db/client'
import { groupedBy } from '@/shared/grouped-by'
import type { NonconformityAtWork } from '@/shared/desk/nonconformities-waiting'
import type { StepKind } from '@/shared/nonconformities/nonconformity'
import type { Department } from '@/shared/plan/department'

/** The nonconformities of some programmes, by the programme's id, as far as a desk asks; two statements. */
export async function nonconformitiesAtWork(
  programmeIds: readonly string[],
): Promise<ReadonlyMap<string, readonly NonconformityAtWork[]>> {
  const within = { programmeId: { in: [...programmeIds] } }
  const [rows, steps] = await Promise.all([
    database().nonconformity.findMany({
      where: within,
      orderBy: { number: 'asc' },
      select: { programmeId: true, number: true, title: true, owner: true },
    }),
    database().nonconformityStep.findMany({
      where: { ...within, withdrawnAt: null },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
      select: { programmeId: true, nonconformity: true, kind: true, helped: true, addedById: true },
    }),
  ])
  const stepsOf = groupedBy(
    steps,
    ({ programmeId, nonconformity }) => `${programmeId} ${nonconformity}`,
    ({ kind, helped, addedById }) => ({ kind: kind as StepKind, helped, addedById, withdrawn: null }),
  )
  return groupedBy(
    rows,
    ({ programmeId }) => programmeId,
    ({ programmeId, number, title, owner }) => ({
      number,
      title,
      owner: owner as Department,
      steps: stepsOf.get(`${programmeId} ${number}`) ?? [],
    }),
  )
}
