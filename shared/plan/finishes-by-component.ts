import type { LeadFinish } from '@/shared/plan/parameters/finishes'

const nameKey = (component: string): string => component.trim().toLowerCase()

/** Looks up a component's lead finish by name, whatever its capitals; the first row of a name counts. */
export function finishesByComponent(
  finishes: readonly LeadFinish[],
): (component: string) => LeadFinish | undefined {
  const byName = new Map<string, LeadFinish>()
  for (const finish of finishes) {
    const key = nameKey(finish.component)
    if (!byName.has(key)) byName.set(key, finish)
  }
  return (component) => byName.get(nameKey(component))
}
