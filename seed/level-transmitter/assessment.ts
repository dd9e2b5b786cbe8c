import { callBlindSet } from '@/seed/level-transmitter/blind-set'
import { inspect } from '@/seed/level-transmitter/inspections'
import { testLife } from '@/seed/level-transmitter/life-tests'
import type { Story } from '@/seed/story'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** The board as it crosses the wave, for the plan of its defects. */
const BOARD_PLAN: Readonly<Record<string, JsonValue>> = {
  'board-length': 160,
  'board-width': 100,
  'component-places': [
    { component: 'T1', row: 'along', xMm: 138, yMm: 78 },
    { component: 'U1–U9', row: 'along', xMm: 78, yMm: 40 },
    { component: 'J1', row: 'across', xMm: 12, yMm: 50 },
    { component: 'R1–R40', row: 'neither' },
    { component: 'C1–C22', row: 'neither' },
  ],
}

/** What was made is inspected against the budget the specification set. */
export async function assess(story: Story): Promise<void> {
  await story.on('2026-04-08').specify(
    'quill',
    {
      'inspected-assemblies-share': 100,
      'agreement-study-asked': true,
      'insulation-test': 'j-std-004a',
      'field-record-asked': false,
      'defect-charts': [{ chart: 'u-by-day' }, { chart: 'c' }],
    },
    'A first series of class 3 is looked at whole, and every defect in it has its cause looked for. Its boards serve too few hours to show 57 FIT: the life test shows it, service is watched.',
  )
  await story.specify('ines', BOARD_PLAN, 'Outline drawing and layout, revision C.')
  await inspect(story)
  await cleanAndTest(story)
  await callBlindSet(story)
  await testLife(story)
  await story.specify('petra', { 'working-hour-cost': 42 }, 'The rate of bench 3 this year.')
  await story.on('2026-04-17').approve('assessment')
  await story.signGate('assessment')
}

/** Comb patterns of three coupons soldered and cleaned with the series, read in MΩ at 24, 96 and 168 h. */
const PATTERNS = [
  ['comb B on coupon K-2609-1', 1900, 2400, 2600],
  ['comb B on coupon K-2609-2', 2100, 2700, 2900],
  ['comb B on coupon K-2609-3', 1700, 2200, 2500],
] as const

async function cleanAndTest(story: Story): Promise<void> {
  story.on('2026-04-14')
  await story.do('sunniva', 'add-record', {
    kind: 'ionic-cleanliness',
    rows: ['LX41-0010', 'LX41-0075', 'LX41-0140'].map((assembly, index) => ({
      testedOn: '2026-04-13',
      assembly,
      method: 'manual',
      concentrationUgPerMl: [0.42, 0.48, 0.45][index] ?? 0.45,
      solventMl: 500,
      lengthMm: 160,
      widthMm: 100,
      componentAllowancePct: 10,
      minutes: 10,
      solventC: 23,
    })),
  })
  await story.do('goran', 'add-record', {
    kind: 'flux-removal',
    rows: [
      {
        triedOn: '2026-04-13',
        assembly: 'LX41-0010',
        cleaning: 'saponified water, 55 °C, rinsed twice',
        beforeUgPerCm2: 6.2,
        afterUgPerCm2: 0.6,
        residue: 'none',
      },
    ],
  })
  await story.do('sunniva', 'add-record', {
    kind: 'insulation-resistance',
    rows: PATTERNS.flatMap(([pattern, ...readings]) =>
      [24, 96, 168].map((hours, index) => ({
        testedOn: ['2026-04-08', '2026-04-11', '2026-04-14'][index]!,
        pattern,
        condition: 'j-std-004a',
        hours,
        resistanceMOhm: readings[index]!,
        ...(hours === 168 && { look: 'clean' }),
      })),
    ),
  })
  await story.do('goran', 'add-record', {
    kind: 'electrical-test',
    rows: [
      {
        testedOn: '2026-04-14',
        assembly: 'LX41-0001 to LX41-0240',
        tested: 240,
        passedFirst: 240,
        jointFailures: 0,
      },
    ],
  })
}
