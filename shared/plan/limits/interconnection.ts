import { published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const contactGoldMin = limit({
  key: 'contact-gold-least',
  label: 'Gold on edge contacts',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 1.27,
    authority: 'standard',
    from: published(
      'MIL-STD-275 and MIL-G-45204: 50 to 100 microinches on contacts (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
  },
})

export const contactNickelMin = limit({
  key: 'contact-nickel-least',
  label: 'Nickel under the gold of edge contacts',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 5.1,
    authority: 'standard',
    from: published(
      'MIL-STD-275: low-stress nickel of at least 0.0002 in (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
  },
})
