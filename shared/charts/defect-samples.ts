import type { Inspection } from '@/shared/records/inspection'

/** What was looked at together, in the order it was looked at: an assembly, or all assemblies of a day. */
export interface DefectSample {
  readonly name: string
  /** 'YYYY-MM-DD' */
  readonly on: string
  readonly assemblies: number
  readonly defectiveAssemblies: number
  readonly jointsSeen: number
  readonly defects: number
}

/** One sample an inspection, oldest first; those of one day in the order they were recorded. */
export const samplesByAssembly = (inspections: readonly Inspection[]): DefectSample[] =>
  inspections
    .map(({ assembly, inspectedOn, jointsSeen, defects }) => ({
      name: assembly,
      on: inspectedOn,
      assemblies: 1,
      defectiveAssemblies: defects.length > 0 ? 1 : 0,
      jointsSeen,
      defects: defects.length,
    }))
    .sort((one, other) => (one.on === other.on ? 0 : one.on < other.on ? -1 : 1))

/** One sample a day of inspection, oldest first. */
export function samplesByDay(inspections: readonly Inspection[]): DefectSample[] {
  const days = new Map<string, DefectSample>()
  for (const one of samplesByAssembly(inspections)) {
    const known = days.get(one.on)
    days.set(one.on, {
      name: one.on,
      on: one.on,
      assemblies: one.assemblies + (known?.assemblies ?? 0),
      defectiveAssemblies: one.defectiveAssemblies + (known?.defectiveAssemblies ?? 0),
      jointsSeen: one.jointsSeen + (known?.jointsSeen ?? 0),
      defects: one.defects + (known?.defects ?? 0),
    })
  }
  return [...days.values()]
}
