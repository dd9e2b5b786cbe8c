import type { PersonIds } from '@/seed/people'
import { Story } from '@/seed/story'
import { LINE } from '@/seed/works'

/** VP-3: opened yesterday; nothing is specified but what it is for. */
export async function tellValvePositioner(people: PersonIds): Promise<void> {
  const story = new Story(people, 'VP-3', '2026-11-24')
  await story.act('ines', 'open-programme', {
    code: story.code,
    title: 'Valve positioner, sensor board',
    department: 'design',
    productClass: '2',
    alloyFamily: 'lead-free',
    serviceYears: 12,
    environment: 'GB',
    annualVolume: 2500,
  })
  await story.do('ines', 'invite-member', { email: 'goran@demo.invalid', department: 'production' })
  await story.do('ines', 'invite-member', { email: 'sunniva@demo.invalid', department: 'quality' })
  await story.do('goran', 'state-line', { line: LINE })
}
