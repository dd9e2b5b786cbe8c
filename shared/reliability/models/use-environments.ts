import { fromMemory, published } from '@/shared/sources/provenance'

const read = published(
  'IPC-SM-785 Table 1 (read in a reprint, Evans, A Guide to Lead-free Solders, 2007, Table 8.1)',
)
const remembered = fromMemory('IPC-SM-785 Table 1')

/**
 * Typical service environments of surface-mounted assemblies. The swing is that
 * of an ordinary cycle, not the distance from coldest to hottest. Starting values for a
 * programme to replace by its own.
 */
export const USE_ENVIRONMENTS = [
  {
    name: 'consumer',
    coldestC: 0,
    hottestC: 60,
    cycles: [{ swingK: 35, dwellH: 12, perYear: 365 }],
    serviceYears: { min: 1, max: 3 },
    source: read,
  },
  {
    name: 'computers',
    coldestC: 15,
    hottestC: 60,
    cycles: [{ swingK: 20, dwellH: 2, perYear: 1460 }],
    serviceYears: { min: 5, max: 5 },
    source: published('IPC-SM-785 Table 1; cycles 1450 in the reprint, 1460 (four a day) from memory'),
  },
  {
    name: 'telecommunications',
    coldestC: -40,
    hottestC: 85,
    cycles: [{ swingK: 35, dwellH: 12, perYear: 365 }],
    serviceYears: { min: 7, max: 20 },
    source: read,
  },
  {
    name: 'commercial aircraft',
    coldestC: -55,
    hottestC: 95,
    cycles: [{ swingK: 20, dwellH: 2, perYear: 3000 }],
    serviceYears: { min: 10, max: 10 },
    source: published('IPC-SM-785 Table 1 in the reprint; memory disagrees (12 h, 365 a year, 20 years)'),
  },
  {
    name: 'automotive, under the hood',
    coldestC: -55,
    hottestC: 125,
    cycles: [
      { swingK: 60, dwellH: 1, perYear: 1000 },
      { swingK: 100, dwellH: 1, perYear: 300 },
      { swingK: 140, dwellH: 2, perYear: 40 },
    ],
    serviceYears: { min: 5, max: 5 },
    source: read,
  },
  {
    name: 'industrial and automotive, passenger space',
    coldestC: -55,
    hottestC: 95,
    cycles: [
      { swingK: 20, dwellH: 12, perYear: 185 },
      { swingK: 40, dwellH: 12, perYear: 100 },
      { swingK: 60, dwellH: 12, perYear: 60 },
      { swingK: 80, dwellH: 12, perYear: 20 },
    ],
    serviceYears: { min: 10, max: 10 },
    source: fromMemory('IPC-SM-785 Table 1; the reprint has 65 °C for the passenger space'),
  },
  {
    name: 'military, ground and ship',
    coldestC: -55,
    hottestC: 95,
    cycles: [
      { swingK: 40, dwellH: 12, perYear: 100 },
      { swingK: 60, dwellH: 12, perYear: 265 },
    ],
    serviceYears: { min: 5, max: 10 },
    source: remembered,
  },
] as const
