import { DAYS, ASSEMBLIES_A_DAY } from '@/seed/level-transmitter/days'
import { serials } from '@/seed/level-transmitter/serials'
import type { Story } from '@/seed/story'
import { defectChart } from '@/shared/charts/defect-chart'
import { defectSignals } from '@/shared/charts/defect-signals'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'

/** Joints of one board: the machine soldered and the hand soldered ones of its hole table. */
const JOINTS = 306
const DEFECTIVE = 'LX41-0057'

/** All 240 assemblies, each on the day it was soldered: one joint short of solder, mended, and its cause found. */
export async function inspect(story: Story): Promise<void> {
  const inspections = serials(1, DAYS.length * ASSEMBLIES_A_DAY).map((assembly, index) => ({
    assembly,
    inspectedOn: DAYS[Math.floor(index / ASSEMBLIES_A_DAY)]!,
    inspector: 'Sunniva Brandt',
    magnification: 4,
    jointsSeen: JOINTS,
    defects:
      assembly === DEFECTIVE
        ? [{ kind: 'insufficient solder' as const, joint: 'U3-4', xMm: 61.5, yMm: 32 }]
        : [],
    note: '',
  }))
  await story.on('2026-04-10').do('sunniva', 'record-inspection', { inspections })
  await story.do('goran', 'add-record', {
    kind: 'rework',
    rows: [
      {
        doneOn: '2026-04-10',
        worker: 'Goran Eide',
        assembly: DEFECTIVE,
        joint: 'U3-4',
        defect: 'insufficient solder',
        heats: 1,
        minutes: 6,
      },
    ],
  })
  await answerSignals(story)
}

/** So low a rate lies within its limits day by day; the one board with a defect lies beyond those of a board. */
async function answerSignals(story: Story): Promise<void> {
  const { state } = await story.read()
  const choice = { chart: 'c', phases: [] } as const
  const found = defectChart(state.facts.records.inspections, choice, RUN_RULE_SETS.limits.drawn)
  const signals = defectSignals(found, choice, 'limits').filter(({ asked }) => asked)
  await story.do('petra', 'add-record', {
    kind: 'defect-signal-answer',
    rows: signals.map(({ chart, chartRule, sample, inspectedOn }) => ({
      chart,
      chartRule,
      sample,
      inspectedOn,
      answer: 'cause-removed',
      cause: 'The foam of the fluxer had fallen low at the edge of the board: hole U3-4 was hardly fluxed.',
      action:
        'Foam stone cleaned, its height now looked at with every start; that day’s assemblies looked at again.',
      by: 'Petra Vance',
      on: '2026-04-10',
    })),
  })
}
