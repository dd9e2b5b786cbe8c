import { applicableDocuments } from '@/shared/plan/parameters/documents'
import { conductors } from '@/shared/plan/parameters/conductors'
import { boardFinish, boardFinishMin, boardFinishMax, leadFinishes } from '@/shared/plan/parameters/finishes'
import { interconnection } from '@/shared/plan/parameters/interconnection'
import {
  boardQuality,
  defectFreeBoards,
  failureRateEdition,
  surfaceMountJoints,
  survivalTarget,
} from '@/shared/plan/parameters/joint-budget'
import { contactAngle, leadProjection, leadProjectionAtMost } from '@/shared/plan/parameters/joint-geometry'
import {
  boardThickness,
  bowAndTwist,
  copperFoil,
  copperLayers,
  laminate,
  serviceTemperature,
  solderExposures,
} from '@/shared/plan/parameters/laminate'
import {
  drillSeries,
  barrelPlating,
  leadHoles,
  producibilityLevel,
} from '@/shared/plan/parameters/lead-holes'
import {
  alloyFamily,
  annualVolume,
  environment,
  productClass,
  serviceYears,
} from '@/shared/plan/parameters/programme'
import { flux, fluxResidue, leadRestriction, solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { copperToEdge, partsToEdge, spacings } from '@/shared/plan/parameters/spacings'
import { steadyService } from '@/shared/plan/parameters/thermal-fatigue'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'
import { leadHole } from './lead-hole-rows'
import { spacing } from './spacing-rows'

/** An invented board whose specification meets every rule of the stage with the defaults. */
export const soundBoard = (): SetValue[] => [
  set(productClass, '3'),
  set(alloyFamily, 'tin-lead'),
  set(serviceYears, 20),
  set(environment, 'GF'),
  set(annualVolume, 400),
  set(applicableDocuments, [
    { document: 'CS-100', edition: 'issue 2', authority: 'customer', governs: 'everything', note: undefined },
  ]),
  set(survivalTarget, 98),
  set(defectFreeBoards, 99),
  set(boardQuality, 'qualified'),
  set(surfaceMountJoints, 0),
  set(contactAngle, 30),
  set(steadyService, true),
  set(failureRateEdition, 'notice-2'),
  set(laminate, 'fr-4'),
  set(boardThickness, 1.6),
  set(copperLayers, 2),
  set(copperFoil, '35'),
  set(serviceTemperature, 70),
  set(bowAndTwist, 1),
  set(solderExposures, [{ step: 'Wave', kind: 'wave', temperatureC: 250, seconds: 4, times: 1 }]),
  set(leadHoles, [
    leadHole({ joints: 300, holeGiven: 'drilled', holeMm: 1.2 }),
    leadHole({ component: 'T1', joints: 12, leadMm: 0.9, holeGiven: 'drilled', holeMm: 1.3, landMm: 2.2 }),
  ]),
  set(barrelPlating, 35),
  set(producibilityLevel, 'B'),
  set(drillSeries, 'metric-0.05'),
  set(leadProjection, 1.2),
  set(leadProjectionAtMost, 1.5),
  set(conductors, [
    {
      net: 'SUPPLY',
      layer: 'external',
      widthMm: 1,
      copperUm: 35,
      currentA: 1,
      lengthMm: 100,
      dropMostMv: 100,
    },
  ]),
  set(spacings, [
    spacing(),
    spacing({ between: 'T1-1 and T1-2', solderSide: 'bare', category: 'B2', peakV: 40 }),
  ]),
  set(copperToEdge, 1),
  set(partsToEdge, 5),
  set(interconnection, 'pins'),
  set(boardFinish, 'tin-lead-plated'),
  set(boardFinishMin, 7),
  set(boardFinishMax, 10),
  set(leadFinishes, [leadFinish({ coatingUm: 7 }), leadFinish({ component: 'T1', coatingUm: 7 })]),
  set(boardStorageMonths, 6),
  set(leadStorageMonths, 12),
  set(storageTemperature, 22),
  set(solderAlloy, 'sn60pb40'),
  set(flux, 'rol0'),
  set(fluxResidue, 'removed'),
  set(leadRestriction, 'out-of-scope'),
  set(solderingProcess, 'wave'),
]
