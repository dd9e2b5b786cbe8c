import { limit } from '@/shared/plan/requirement'
import { commonPractice, computed, fromMemory, published } from '@/shared/sources/provenance'

const RADIAL = commonPractice('Radial clearance of 0.10 to 0.25 mm between lead and plated hole')

export const radialClearanceMin = limit({
  key: 'radial-clearance-least',
  label: 'Radial clearance between lead and hole, least',
  unit: 'mm',
  direction: 'at least',
  byDefault: { value: 0.1, authority: 'common practice', from: RADIAL },
})

export const radialClearanceMax = limit({
  key: 'radial-clearance-most',
  label: 'Radial clearance between lead and hole, most',
  unit: 'mm',
  direction: 'at most',
  byDefault: { value: 0.25, authority: 'common practice', from: RADIAL },
})

export const clearanceOutsideMax = limit({
  key: 'clearance-outside-most',
  label: 'Joints outside the clearance window, when judged statistically',
  unit: 'per million',
  direction: 'at most',
  byDefault: {
    value: 2700,
    authority: 'common practice',
    from: computed(
      'Share of a centred normal distribution outside three standard deviations: 2 700 per million',
    ),
  },
})

export const flatLeadGapMax = limit({
  key: 'flat-lead-gap-most',
  label: 'Hole less thickness of a flat lead, most',
  unit: 'mm',
  direction: 'at most',
  byDefault: {
    value: 0.711,
    authority: 'standard',
    from: published('MIL-STD-275: flat ribbon lead, nominal hole at most 0.028 in over the thickness'),
  },
})

export const ringExternalMin = limit({
  key: 'annular-ring-external-least',
  label: 'Annular ring of a plated hole, outer layer',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.05,
    authority: 'standard',
    from: published(
      'IPC-2221B, Table 9-2: external, supported, printed in K. Mitzner, Complete PCB Design (2019)',
    ),
  },
})

export const ringUnsupportedMin = limit({
  key: 'annular-ring-unsupported-least',
  label: 'Annular ring of an unplated hole',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.15,
    authority: 'standard',
    from: { cite: 'IPC-2221, Table 9-2: external, unsupported', how: 'from memory' },
  },
})

/** Measured from the drilled hole, before plating: IPC-2221, 9.2.2. */
export const ringInternalMin = limit({
  key: 'annular-ring-internal-least',
  label: 'Annular ring of a plated hole, inner layer',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.03,
    authority: 'standard',
    from: fromMemory('IPC-2221, Table 9-2: internal, supported'),
  },
})

export const holeCopperOtherClassesMin = limit({
  key: 'hole-copper-other-classes-least',
  label: 'Copper on the wall of a plated hole, classes 1 and 2',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 20,
    authority: 'standard',
    from: published(
      'IPC-6012, external conductor thickness after plating (Table 3-12 of revision C, from memory): 20 µm plated of classes 1 and 2, 25 µm of class 3, by difference of what NCAB Group, “How much finished copper can be expected?”, prints',
    ),
  },
})

export const leadFreeCopperLoss = limit({
  key: 'lead-free-copper-loss',
  label: 'Barrel copper kept for lead-free solder to take',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 12,
    authority: 'common practice',
    from: published(
      'Coombs & Holden, Printed Circuits Handbook, 7th ed. (2016): up to 12 µm of barrel copper lost to lead-free solder',
    ),
  },
})

export const brittleBarrelYearsMax = limit({
  key: 'brittle-barrel-years-most',
  label: 'Service of barrels built up without current',
  unit: 'years',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'common practice',
    from: commonPractice('For ten years and more barrels are plated by current, which stretch further'),
  },
})

export const drillOffSeriesMax = limit({
  key: 'drill-off-series-most',
  label: 'Drill off its preferred size and still the same drill',
  unit: 'mm',
  direction: 'at most',
  byDefault: {
    value: 0.01,
    authority: 'common practice',
    from: commonPractice('A hundredth of a millimetre is no other drill'),
  },
})

export const aspectRatioMax = limit({
  key: 'aspect-ratio-most',
  label: 'Board thickness over drilled hole',
  unit: '×',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: published(
      'Coombs & Holden, Printed Circuits Handbook, 7th ed. (2016): up to 3 routine, above 5 the barrel thins in the middle',
    ),
  },
})

export const gridShareMin = limit({
  key: 'grid-share-least',
  label: 'Joints on the grid',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 90,
    authority: 'common practice',
    from: commonPractice('Holes on a grid of 2.54 mm or 0.5 mm (IEC 60097) for insertion and test fixtures'),
  },
})
