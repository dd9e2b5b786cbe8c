import { DRILL_SERIES } from '@/shared/materials/preferred-drills'
import { HOLE_ALLOWANCES } from '@/shared/materials/hole-allowances'
import { LAND_EDITIONS } from '@/shared/materials/land-allowances'
import {
  choiceColumn,
  flagColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type NumberColumn,
  type FlagColumn,
} from '@/shared/columns/column'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceParameter, numberParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

/** What a lead is like, as the hole table and a part of the works say it alike. */
export const leadColumns = {
  leadShape: choiceColumn({
    label: 'Lead',
    options: [
      { value: 'round', label: 'Round' },
      { value: 'square', label: 'Square' },
      { value: 'rectangular', label: 'Rectangular' },
      { value: 'flat', label: 'Flat ribbon' },
    ],
  }),
  leadMm: numberColumn({
    label: 'Lead diameter, side or width',
    unit: 'mm',
    min: 0.1,
    max: 8,
  }),
  leadThicknessMm: optionalColumn<NumberColumn>(
    numberColumn({
      label: 'Lead thickness',
      unit: 'mm',
      min: 0.05,
      max: 8,
      help: 'The narrower side of a rectangular or flat lead.',
    }),
  ),
  leadToleranceMm: numberColumn({ label: 'Lead tolerance ±', unit: 'mm', min: 0, max: 1 }),
}

/** The holes of the board with the leads that go into them: one row a kind of joint. */
export const leadHoles = tableParameter({
  key: 'lead-holes',
  label: 'Holes and leads',
  help: 'One row for each kind of joint: how many there are, the lead, the hole it goes into and the land around it.',
  owner: 'design',
  maxRows: 400,
  columns: {
    component: textColumn({
      label: 'Component',
      maxLength: 60,
      help: 'As on the parts list, such as "T1" or "R1–R40"; the lead finishes name it alike.',
    }),
    joints: numberColumn({ label: 'Joints', unit: 'joints', min: 1, max: 100_000, whole: true }),
    soldered: choiceColumn({
      label: 'Soldered',
      options: [
        { value: 'machine', label: 'By machine' },
        { value: 'hand', label: 'By hand' },
      ],
    }),
    plated: flagColumn({ label: 'Plated hole' }),
    ...leadColumns,
    holeMm: numberColumn({ label: 'Hole', unit: 'mm', min: 0.2, max: 10 }),
    holeGiven: choiceColumn({
      label: 'Hole is given',
      options: [
        { value: 'finished', label: 'Finished, after plating' },
        { value: 'drilled', label: 'As drilled' },
      ],
    }),
    holeToleranceMm: numberColumn({
      label: 'Hole tolerance ±',
      unit: 'mm',
      min: 0,
      max: 1,
      help: 'Of the finished hole: drill and plating together.',
    }),
    landMm: numberColumn({ label: 'Land diameter', unit: 'mm', min: 0.3, max: 20 }),
    innerLandMm: optionalColumn<NumberColumn>(
      numberColumn({
        label: 'Land on inner layers',
        unit: 'mm',
        min: 0.3,
        max: 20,
        help: 'Left open where it is as wide as outside.',
      }),
    ),
    leadsEach: optionalColumn<NumberColumn>(
      numberColumn({
        label: 'Leads of one component',
        unit: '1',
        min: 1,
        max: 2000,
        whole: true,
        help: 'Editions ask less fill of components with many leads. Left open, the fill of few leads is asked.',
      }),
    ),
    clinched: optionalColumn<FlagColumn>(
      flagColumn({ label: 'Lead clinched', help: 'Bent over on its land before soldering.' }),
    ),
    leadPositionMm: optionalColumn<NumberColumn>(
      numberColumn({
        label: 'Lead off its place',
        unit: 'mm',
        min: 0,
        max: 2,
        help: 'How far a lead of a multi-lead component may stand off its true position: it eats clearance.',
      }),
    ),
    onGrid: optionalColumn<FlagColumn>(flagColumn({ label: 'On the grid' })),
  },
})
export type LeadHole = ValueOf<typeof leadHoles>[number]

export const producibilityLevel = choiceParameter({
  key: 'producibility-level',
  label: 'Producibility level',
  help: 'How tight the holes and lands are drawn: A is easiest to make, C hardest.',
  owner: 'design',
  options: optionsOf(HOLE_ALLOWANCES),
})

export const barrelPlating = numberParameter({
  key: 'hole-wall',
  label: 'Metal on the wall of a plated hole',
  help: 'Copper and finish together, as ordered: twice this is taken off a drilled hole.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 150,
})

export const barrelCopper = numberParameter({
  key: 'hole-copper',
  label: 'Copper on the wall of a plated hole, at least',
  help: 'As ordered, without the finish. Left open, what is sure of it: the metal on the wall less the most that the finish may take of it.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 150,
})

export const landEdition = choiceParameter({
  key: 'land-edition',
  label: 'Lands drawn to',
  help: 'Documents disagree on the allowance around a hole. Left open, the strictest of those in use applies.',
  owner: 'design',
  options: optionsOf(LAND_EDITIONS),
})

export const drillSeries = choiceParameter({
  key: 'drill-series',
  label: 'Preferred drills',
  help: 'The series that suggested holes are taken from.',
  owner: 'production',
  options: optionsOf(DRILL_SERIES),
})

export const clearanceBasis = choiceParameter({
  key: 'clearance-basis',
  label: 'Clearance judged by',
  help: 'Worst case asks every lead to fit every hole; the statistical way allows the share outside the window that the limit names. Left open, worst case applies.',
  owner: 'quality',
  options: [
    { value: 'worst-case', label: 'Worst case' },
    { value: 'statistical', label: 'Share outside the window' },
  ],
})

export const toleranceSigmas = numberParameter({
  key: 'tolerance-sigmas',
  label: 'Standard deviations in a tolerance',
  help: 'What a stated ± means for the spread of hole and lead. Left open, three.',
  owner: 'quality',
  unit: '1',
  min: 1,
  max: 6,
})
