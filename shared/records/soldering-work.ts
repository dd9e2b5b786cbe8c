import type { RecordOf } from './record-kinds'

export type SolderingRun = RecordOf<'soldering-run'>

/** The days on which work of these skills was done, earliest first, each once. */
export function daysOfWork(
  runs: readonly SolderingRun[],
  skills: readonly SolderingRun['skill'][],
): string[] {
  const days = new Set<string>()
  for (const run of runs) if (skills.includes(run.skill)) days.add(run.doneOn)
  return [...days].sort()
}

/** The days of work with an iron, earliest first, each once. */
export const daysOfHandWork = (runs: readonly SolderingRun[]): string[] =>
  daysOfWork(runs, ['hand-soldering', 'rework'])

/** Two names are one person when they differ in case and spacing only. */
export const samePerson = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()

/** Assemblies soldered: the most that any one kind of work counts, since one board passes several. */
export function assembliesMade(runs: readonly SolderingRun[]): number {
  const bySkill = new Map<string, number>()
  for (const { skill, assemblies } of runs) bySkill.set(skill, (bySkill.get(skill) ?? 0) + assemblies)
  return Math.max(0, ...bySkill.values())
}
