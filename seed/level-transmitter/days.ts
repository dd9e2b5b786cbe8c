/** The two weeks of March in which the first 240 assemblies were soldered, and looked at as they came. */
export const DAYS = [
  '2026-03-23',
  '2026-03-24',
  '2026-03-25',
  '2026-03-26',
  '2026-03-27',
  '2026-03-30',
  '2026-03-31',
  '2026-04-01',
  '2026-04-02',
  '2026-04-03',
]
export const ASSEMBLIES_A_DAY = 24
