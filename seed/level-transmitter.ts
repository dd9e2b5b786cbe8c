import { attachText } from '@/seed/attach-file'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { assess } from '@/seed/level-transmitter/assessment'
import { control } from '@/seed/level-transmitter/control'
import { evaluate } from '@/seed/level-transmitter/evaluation'
import { studyLeadFinish } from '@/seed/level-transmitter/lead-finish-study'
import { serve } from '@/seed/level-transmitter/service'
import type { PersonIds } from '@/seed/people'
import { Story } from '@/seed/story'

/** LX-41: taken through all four stages, and in service. */
export async function tellLevelTransmitter(
  people: PersonIds,
  instruments: Readonly<Record<string, string>>,
): Promise<void> {
  const story = new Story(people, 'LX-41', '2026-02-02')
  await open(story)
  await story
    .on('2026-02-05')
    .specify('ines', LEVEL_TRANSMITTER, 'Proposed for the design review of 5 February.')
  await studyLeadFinish(story, await askProduction(story))
  await attachText(
    story,
    'ines',
    'holes-and-lands',
    'drawing',
    'LX-41-drill-chart.txt',
    DRILL_CHART,
    'Revision C',
  )
  await story.on('2026-02-20').approve('specification')
  await story.signGate('specification')
  await evaluate(story, instruments)
  await control(story, instruments)
  await assess(story)
  await serve(story)
}

async function open(story: Story): Promise<void> {
  await story.act('ines', 'open-programme', {
    code: story.code,
    title: 'Level transmitter, main board',
    department: 'design',
    productClass: '3',
    alloyFamily: 'tin-lead',
    serviceYears: 20,
    environment: 'GF',
    annualVolume: 400,
  })
  const members = [
    ['tomas@demo.invalid', 'design'],
    ['petra@demo.invalid', 'production'],
    ['goran@demo.invalid', 'production'],
    ['quill@demo.invalid', 'quality'],
    ['sunniva@demo.invalid', 'quality'],
  ] as const
  for (const [email, department] of members) await story.do('ines', 'invite-member', { email, department })
}

/** The question every design review asks: what does the better finish cost, and can it be made? */
async function askProduction(story: Story): Promise<number> {
  const asked = await story.do('ines', 'ask-action', {
    item: 'lead-finish',
    from: 'design',
    to: 'production',
    kind: 'cost',
    question:
      'What does a nickel barrier under the tin-lead on the brass pins of T1 and J1 cost a board, against copper?',
    dueOn: '2026-02-13',
  })
  await story.on('2026-02-10').do('petra', 'answer-action', {
    action: asked.action,
    feasible: 'yes',
    amounts: [
      { kind: 'piece', per: 'board', amount: 0.42 },
      { kind: 'lead time', amount: 10 },
    ],
    comment: 'Both suppliers plate nickel as standard; the price is the same from 200 pieces on.',
  })
  await story.do('tomas', 'accept-answer', {
    action: asked.action,
    comment: 'Less than one rework in forty boards.',
  })
  return asked.action
}

const DRILL_CHART = `LX-41 revision C, drill chart (finished holes, mm)
0.85  44  C1-C22
0.90 130  U1-U9
0.95  80  R1-R40
1.25  40  J1
1.35  12  T1
`
