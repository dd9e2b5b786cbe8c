import { stateCompanyRules } from '@/seed/company-rules'
import { addInstruments } from '@/seed/instruments'
import { tellLevelTransmitter } from '@/seed/level-transmitter'
import { describeParts } from '@/seed/parts'
import { addDemoPeople } from '@/seed/people'
import { tellPumpController } from '@/seed/pump-controller'
import { Story } from '@/seed/story'
import { tellValvePositioner } from '@/seed/valve-positioner'
import { openWorks } from '@/seed/works'

/**
 * The demo: an invented firm, its people, and three programmes made only
 * through the door, at the times the story gives.
 */
export default async function seedDemo(): Promise<void> {
  const people = await addDemoPeople(new Date('2026-01-05T08:00:00Z'))
  const instruments = await addInstruments(people)
  await openWorks(new Story(people, '', '2026-01-06'))
  await describeParts(new Story(people, '', '2026-01-07'))
  await tellLevelTransmitter(people, instruments)
  await tellPumpController(people, instruments)
  await tellValvePositioner(people)
  await stateCompanyRules(people)
}
