import { fromMemory, published } from '@/shared/sources/provenance'

/** What one edition asks of the solder in a plated hole, % of the board's thickness; undefined: nothing. */
export const FILL_EDITIONS = {
  'ipc-a-610f': {
    label: 'IPC-A-610F: 75 %, class 2 with 14 leads or more 50 %',
    minPct: { '1': undefined, '2': 75, '3': 75 },
    /** Class 2 components with this many leads or more get by with 50 % or 1.2 mm, whichever is less. */
    manyLeads: { from: 14, pct: 50, mm: 1.2 },
    source: published('IPC-A-610F (July 2014), Table 7-4'),
  },
  'ipc-a-610-classes': {
    label: 'Class 2 50 %, class 3 75 %',
    minPct: { '1': undefined, '2': 50, '3': 75 },
    manyLeads: undefined,
    source: fromMemory('IPC-A-610, earlier editions: class 2 50 %, class 3 75 %'),
  },
  full: {
    label: 'Full: 100 %',
    minPct: { '1': 100, '2': 100, '3': 100 },
    manyLeads: undefined,
    source: published('NASA workmanship, 6.01: full fill preferred'),
  },
} as const
export type FillEdition = keyof typeof FILL_EDITIONS
