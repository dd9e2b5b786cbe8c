import { PARTS_LIST } from '@/seed/parts'
import type { JsonValue } from '@/shared/trail/canonical-json'

/**
 * What is specified for LX-41, the main board of an invented level transmitter:
 * plated holes in epoxy glass, tin-lead, wave soldered, twenty years on a tank.
 * Values by parameter key, in the order the design engineer gives them.
 */
export const LEVEL_TRANSMITTER: Readonly<Record<string, JsonValue>> = {
  'applicable-documents': [
    { document: 'Order 7731, quality annex', edition: 'B', authority: 'customer', governs: 'reliability' },
    { document: 'IPC-2221', edition: 'B', authority: 'standard', governs: 'layout' },
    { document: 'IPC-A-610', edition: 'F', authority: 'standard', governs: 'acceptance' },
    { document: 'Works rule 12, finishes', edition: '3', authority: 'company', governs: 'finishes' },
  ],
  'survival-target': 99,
  'defect-free-boards': 97,
  'board-quality': 'qualified',
  'surface-mount-joints': 0,
  'leadless-present': false,
  'use-cycles': [
    { cycle: 'Day and night on the tank', swingK: 20, hottestC: 60, perYear: 365, dwellMin: 480 },
    { cycle: 'Tank filled hot', swingK: 45, hottestC: 70, perYear: 12, dwellMin: 120 },
  ],
  'cycle-test': [
    { test: '0 °C to 100 °C in air', swingK: 100, hottestC: 100, perDay: 24, dwellMin: 15, cycles: 1200 },
  ],
  laminate: 'fr-4-high',
  'board-thickness': 1.6,
  'copper-layers': 4,
  'copper-foil': '35',
  'glass-transition': 175,
  'service-temperature': 70,
  'bow-and-twist': 0.7,
  'solder-exposures': [
    { step: 'Wave, solder side', kind: 'wave', temperatureC: 250, seconds: 3, times: 1 },
    { step: 'Hand soldering of T1, at the joint', kind: 'hand', temperatureC: 260, seconds: 4, times: 1 },
    { step: 'Rework at the joint, at most twice', kind: 'rework', temperatureC: 260, seconds: 4, times: 2 },
  ],
  'parts-list': PARTS_LIST,
  'lead-holes': [
    hole('T1', 12, { soldered: 'hand', leadMm: 1, leadToleranceMm: 0.02, holeMm: 1.35, landMm: 2.3 }),
    hole('R1–R40', 80, { leadMm: 0.6, leadToleranceMm: 0.02, holeMm: 0.95, landMm: 1.9 }),
    hole('C1–C22', 44, { leadMm: 0.5, leadToleranceMm: 0.02, holeMm: 0.85, landMm: 1.8 }),
    hole('U1–U9', 130, {
      leadShape: 'rectangular',
      leadMm: 0.48,
      leadThicknessMm: 0.28,
      leadToleranceMm: 0.02,
      holeMm: 0.9,
      landMm: 1.8,
    }),
    hole('J1', 40, { leadShape: 'square', leadMm: 0.64, leadToleranceMm: 0.01, holeMm: 1.25, landMm: 2.2 }),
  ],
  'hole-wall': 30,
  'hole-copper': 25,
  'producibility-level': 'B',
  'clearance-basis': 'statistical',
  'lead-projection': 1.2,
  'lead-projection-at-most': 1.5,
  'contact-angle': 25,
  conductors: [
    {
      net: 'Supply, 24 V',
      layer: 'external',
      widthMm: 1.2,
      copperUm: 35,
      currentA: 1.2,
      lengthMm: 80,
      dropMostMv: 100,
    },
    {
      net: 'Loop, 4–20 mA',
      layer: 'external',
      widthMm: 0.3,
      copperUm: 35,
      currentA: 0.03,
      lengthMm: 120,
      dropMostMv: 50,
    },
    { net: 'Relay', layer: 'internal', widthMm: 2, copperUm: 23, currentA: 1, lengthMm: 60, dropMostMv: 100 },
  ],
  spacings: [
    { between: 'Supply and loop', peakV: 40, category: 'B2', gapMm: 0.8, mains: false, solderSide: 'masked' },
    {
      between: 'Relay contacts and loop',
      peakV: 60,
      category: 'B2',
      gapMm: 2.5,
      mains: false,
      solderSide: 'masked',
    },
    {
      between: 'U1 pins',
      peakV: 12,
      category: 'A6',
      gapMm: 0.74,
      mains: false,
      solderSide: 'bare',
      parallelMm: 2,
      travelAngleDeg: 0,
    },
  ],
  'copper-to-edge': 1,
  'parts-to-edge': 5,
  interconnection: 'pins',
  'board-finish': 'hot-air-tin-lead',
  'board-finish-least': 5,
  'board-finish-most': 20,
  'lead-finishes': [
    lead('T1', { base: 'brass', barrier: 'nickel', barrierUm: 4, coating: 'tin-lead', coatingUm: 7 }),
    lead('R1–R40', { base: 'copper', barrier: 'none', coating: 'tin-lead', coatingUm: 8 }),
    lead('C1–C22', { base: 'copper', barrier: 'none', coating: 'tin-lead', coatingUm: 8 }),
    lead('U1–U9', { base: 'iron-nickel', barrier: 'none', coating: 'dipped-tin-lead', coatingUm: 6 }),
    lead('J1', { base: 'brass', barrier: 'nickel', barrierUm: 5, coating: 'tin-lead', coatingUm: 6 }),
  ],
  'board-storage-months': 6,
  'component-storage-months': 12,
  'storage-temperature': 25,
  'solder-alloy': 'sn63pb37',
  flux: 'rol0',
  'flux-residue': 'removed',
  'insulation-needed': 100,
  'lead-restriction': 'out-of-scope',
  'soldering-process': 'wave',
  'process-costs': [
    process('wave', { fixed: 2400, perBoard: 3.1, perJoint: 0.012, defectsPerMillion: 180 }),
    process('selective', { fixed: 900, perBoard: 4.2, perJoint: 0.03, defectsPerMillion: 120 }),
    process('hand', { fixed: 150, perBoard: 1.5, perJoint: 0.11, defectsPerMillion: 900 }),
  ],
  'evaluation-lots-needed': [
    { part: 'bare board LX-41', kind: 'bare board', method: 'rotary-dip' },
    { part: 'bare board LX-41', kind: 'bare board', method: 'plating-thickness' },
    { part: 'coupon LX-41', kind: 'coupon', method: 'rotary-dip' },
    ...['transformer T1', 'resistors R1–R40', 'capacitors C1–C22', 'circuits U1–U9', 'connector J1'].map(
      (part) => ({ part, kind: 'component', method: 'dip-and-look' }),
    ),
    { part: 'flux F2', kind: 'consumable', method: 'receiving-check' },
  ],
  'sampling-inspection-level': 'II',
  'sampling-aql': '1.0',
  'sampling-scheme': 'single',
  'solderability-test-conditions': [
    {
      method: 'rotary-dip',
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 235,
      ageing: 'none',
    },
    {
      method: 'dip-and-look',
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
    },
    {
      method: 'wetting-balance',
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
    },
  ],
}

type Row = Readonly<Record<string, string | number | boolean>>

function hole(component: string, joints: number, rest: Row): Row {
  return {
    component,
    joints,
    soldered: 'machine',
    plated: true,
    leadShape: 'round',
    holeGiven: 'finished',
    holeToleranceMm: 0.05,
    onGrid: true,
    ...rest,
  }
}

function process(name: string, rest: Row): Row {
  return { process: name, perRework: 6, foundPct: 95, failingPct: 10, perFieldRepair: 420, ...rest }
}

function lead(component: string, rest: Row): Row {
  return { component, ...rest }
}
