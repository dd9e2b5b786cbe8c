import { Story } from '@/seed/story'
import type { PersonIds } from '@/seed/people'

const REGISTER = [
  ['RD-02', 'rotary dip tester, timing and bath temperature'],
  ['XF-01', 'coating thickness, X-ray fluorescence'],
  ['MM-07', 'measuring microscope, thickness in microsections'],
  ['WB-04', 'wetting balance: force, time and depth of immersion'],
  ['TH-05', 'thermometer of the test bath'],
  ['HY-03', 'hydrometer for flux, with thermometer'],
  ['TC-09', 'thermocouple and reader for solder baths and tips'],
  ['SP-04', 'spectrometer for solder'],
] as const

/** The firm's instruments, all in calibration; answers their ids by tag. */
export async function addInstruments(people: PersonIds): Promise<Readonly<Record<string, string>>> {
  const story = new Story(people, 'the register', '2026-01-12')
  const ids: Record<string, string> = {}
  for (const [tag, measures] of REGISTER) {
    const added = await story.act('adela', 'add-instrument', {
      tag,
      measures,
      calibratedOn: '2026-01-08',
      dueOn: '2027-01-08',
      certificate: `CAL-26-${tag}`,
    })
    ids[tag] = added.instrument
  }
  return ids
}
