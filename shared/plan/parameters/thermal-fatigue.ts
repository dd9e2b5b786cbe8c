import { numberColumn, textColumn } from '@/shared/columns/column'
import { flagParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

export const useCycles = tableParameter({
  key: 'use-cycles',
  label: 'Temperature cycles in service',
  help: 'One row for each ordinary swing: what the joint sees in a cycle, not the range of the year. Where service has none worth counting, say so below.',
  owner: 'design',
  maxRows: 12,
  columns: {
    cycle: textColumn({ label: 'Cycle', maxLength: 60 }),
    swingK: numberColumn({ label: 'Swing', unit: 'K', min: 1, max: 250 }),
    hottestC: numberColumn({ label: 'Hottest', unit: '°C', min: -50, max: 250 }),
    perYear: numberColumn({ label: 'Cycles a year', unit: 'cycles', min: 0.1, max: 100_000 }),
    dwellMin: numberColumn({ label: 'Dwell at the hot end', unit: 'min', min: 0.1, max: 100_000 }),
  },
})
export type UseCycle = ValueOf<typeof useCycles>[number]

export const steadyService = flagParameter({
  key: 'steady-service',
  label: 'Service without temperature cycles',
  help: 'The temperature of the board stays as good as level all its life: heated around the clock, or always at room temperature.',
  owner: 'design',
})

export const cycleTest = tableParameter({
  key: 'cycle-test',
  label: 'Temperature-cycle test',
  help: 'One row: the test that shows the joints’ life, and how many cycles they are to survive.',
  owner: 'quality',
  maxRows: 1,
  columns: {
    test: textColumn({ label: 'Test', maxLength: 60 }),
    swingK: numberColumn({ label: 'Swing', unit: 'K', min: 1, max: 300 }),
    hottestC: numberColumn({ label: 'Hottest', unit: '°C', min: -50, max: 250 }),
    perDay: numberColumn({ label: 'Cycles a day', unit: 'cycles', min: 0.1, max: 2000 }),
    dwellMin: numberColumn({ label: 'Dwell at the hot end', unit: 'min', min: 0.1, max: 10_000 }),
    cycles: numberColumn({ label: 'Cycles to survive', unit: 'cycles', min: 1, max: 1e6, whole: true }),
  },
})
export type CycleTest = ValueOf<typeof cycleTest>[number]

/** Leadless surface-mounted parts whose strain the Engelmaier model can be asked about. */
export const leadlessParts = tableParameter({
  key: 'leadless-parts',
  label: 'Largest leadless parts',
  help: 'Surface-mounted parts without leads, by half the span between their outermost joints. Where there are none on the board, say so below.',
  owner: 'design',
  maxRows: 30,
  columns: {
    part: textColumn({ label: 'Part', maxLength: 60 }),
    halfSpanMm: numberColumn({ label: 'Half span', unit: 'mm', min: 0.1, max: 60 }),
    heightMm: numberColumn({ label: 'Height of the joint', unit: 'mm', min: 0.01, max: 5 }),
    expansionPpmK: numberColumn({ label: 'Expansion of the part', unit: 'ppm/K', min: 0, max: 100 }),
  },
})
export type LeadlessPart = ValueOf<typeof leadlessParts>[number]

export const leadlessPresent = flagParameter({
  key: 'leadless-present',
  label: 'Leadless parts on the board',
  help: 'Whether any surface-mounted part is joined by its body: chips, ball grids, carriers without leads.',
  owner: 'design',
})
