import type { Story } from '@/seed/story'

/** After the last gate: what serves, what came back, what quality cost, and what it taught. */
export async function serve(story: Story): Promise<void> {
  await countCosts(story)
  await story.on('2026-10-05').do('quill', 'add-record', { kind: 'field-exposure', rows: SERVED })
  await story.do('quill', 'add-record', { kind: 'field-return', rows: RETURNED })
  await learn(story)
  // Approved when nothing served yet; what the field said since wants to be seen by those who approved.
  await story.on('2026-10-21').approve('assessment')
}

/** Boards in service at the three sites, month by month. */
const SERVED = (
  [
    ['2026-05-01', '2026-05-31', 60, 744],
    ['2026-06-01', '2026-06-30', 130, 720],
    ['2026-07-01', '2026-07-31', 190, 744],
    ['2026-08-01', '2026-08-31', 228, 744],
    ['2026-09-01', '2026-09-30', 228, 720],
  ] as const
).map(([from, to, boards, hoursEach]) => ({
  from,
  to,
  boards,
  hoursEach,
  source: 'service reports of the three sites',
}))

const RETURNED: Record<string, string | number>[] = [
  {
    returnedOn: '2026-08-19',
    assembly: 'LX41-0031',
    cause: 'board',
    jointsFailed: 0,
    hours: 1860,
    lesson: 'Residue under T1 conducted when dew fell on it; the average over the board had hidden it.',
    cost: 420,
  },
  {
    returnedOn: '2026-09-23',
    assembly: 'LX41-0118',
    cause: 'no-fault',
    jointsFailed: 0,
    hours: 2010,
    cost: 120,
  },
]

/** Sums of the first series, with the decision behind them where there is one. */
async function countCosts(story: Story): Promise<void> {
  const rows = [
    [
      '2026-02-25',
      'prevention',
      380,
      'Set-up of nickel plating at two suppliers',
      'Nickel under the tin-lead',
    ],
    ['2026-03-04', 'prevention', 640, 'Process review and jigs of the line', undefined],
    [
      '2026-03-12',
      'appraisal',
      910,
      'Solderability and plating tests of the lots',
      'Every lot evaluated here',
    ],
    ['2026-04-10', 'appraisal', 1480, 'Inspection of 240 assemblies', 'All assemblies inspected'],
    ['2026-04-14', 'appraisal', 520, 'Ionic extract and insulation tests', undefined],
    ['2026-04-16', 'appraisal', 2300, 'Chambers for the life tests', 'Life test asked'],
    ['2026-09-02', 'external-failure', 340, 'Analysis of the board that came back', undefined],
  ] as const
  await story.on('2026-10-02').do('petra', 'add-record', {
    kind: 'quality-cost',
    rows: rows.map(([spentOn, costClass, amount, what, decision]) => ({
      spentOn,
      costClass,
      amount,
      what,
      ...(decision && { decision }),
    })),
  })
}

/** One return became a stricter limit for the programmes after this one. */
async function learn(story: Story): Promise<void> {
  const { state } = await story.read()
  const taught = state.facts.records.byKind.get('field-return')?.[0]
  if (!taught) throw new Error('The story of LX-41 has no field return to learn from.')
  const { lesson } = await story.on('2026-10-08').do('sunniva', 'propose-lesson', {
    title: 'Residue that an average hides',
    learnt:
      'The extract of the whole board met the limit, yet enough residue lay under the transformer to conduct when dew fell on it. A board whose average is half the limit leaves room for such a place.',
    source: { kind: 'record', key: taught.id },
    change: { kind: 'limit', limit: 'ionic-residue-most', value: 1 },
  })
  await story.on('2026-10-20').do('quill', 'decide-lesson', {
    lesson,
    accept: true,
    reason: 'Cleaning reaches 0.7 without effort, and the analysis is sound.',
  })
}
