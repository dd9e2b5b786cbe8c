import type { ItemDefinition } from './item'
import {
  aspectRatioMax,
  brittleBarrelYearsMax,
  clearanceOutsideMax,
  drillOffSeriesMax,
  flatLeadGapMax,
  gridShareMin,
  holeCopperOtherClassesMin,
  leadFreeCopperLoss,
  radialClearanceMin,
  radialClearanceMax,
  ringExternalMin,
  ringInternalMin,
  ringUnsupportedMin,
} from '@/shared/plan/limits/lead-holes'
import {
  aspectRatioGuard,
  clearanceShareGuard,
  clearanceWindowGuard,
  flatLeadGuard,
  gridShareGuard,
  holeWindowGuard,
  leadEntryGuard,
  ringGuard,
} from '@/shared/plan/limits/specification-guards'
import {
  clearanceBasis,
  drillSeries,
  barrelCopper,
  barrelPlating,
  landEdition,
  leadHoles,
  producibilityLevel,
  toleranceSigmas,
} from '@/shared/plan/parameters/lead-holes'
import { aspectRatio } from '@/shared/rules/specification/aspect-ratio'
import { gridShare } from '@/shared/rules/specification/grid-share'
import { preferredDrills } from '@/shared/rules/specification/preferred-drills'
import { annularRing } from '@/shared/rules/specification/annular-ring'
import { holeCopper } from '@/shared/rules/specification/hole-copper'
import { holeProducibility } from '@/shared/rules/specification/hole-producibility'
import { leadClearance } from '@/shared/rules/specification/lead-clearance'

export const holesAndLandsItem: ItemDefinition = {
  key: 'holes-and-lands',
  stage: 'specification',
  title: 'Holes, leads and lands',
  asks: 'Does every lead enter its hole, leave solder a gap that it fills, and stand on a land that holds?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [
    leadHoles,
    barrelPlating,
    barrelCopper,
    producibilityLevel,
    landEdition,
    drillSeries,
    clearanceBasis,
    toleranceSigmas,
  ],
  limits: [
    radialClearanceMin,
    radialClearanceMax,
    clearanceOutsideMax,
    flatLeadGapMax,
    ringExternalMin,
    ringUnsupportedMin,
    ringInternalMin,
    aspectRatioMax,
    gridShareMin,
    holeCopperOtherClassesMin,
    leadFreeCopperLoss,
    brittleBarrelYearsMax,
    drillOffSeriesMax,
    clearanceWindowGuard,
    clearanceShareGuard,
    leadEntryGuard,
    flatLeadGuard,
    holeWindowGuard,
    ringGuard,
    aspectRatioGuard,
    gridShareGuard,
  ],
  rules: [leadClearance, holeProducibility, preferredDrills, annularRing, aspectRatio, holeCopper, gridShare],
  evidence: [{ kind: 'drawing', label: 'Drill drawing or fabrication files', required: true }],
  cautions: [],
}
