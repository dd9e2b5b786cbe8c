import { published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** Where two conductors face each other, in the letters of IPC-2221A/B (2221C gives some letters another meaning). */
export const SPACING_CATEGORIES = {
  B1: 'Internal conductors',
  B2: 'External, uncoated, up to 3050 m above sea',
  B3: 'External, uncoated, above 3050 m',
  B4: 'External, with permanent polymer coating (solder mask)',
  A5: 'External, conformal coating over the assembly',
  A6: 'Component leads, uncoated',
  A7: 'Component leads, with conformal coating',
} as const
export type SpacingCategory = keyof typeof SPACING_CATEGORIES

export interface SpacingTable {
  readonly label: string
  /** Rows by rising voltage, mm. The last row ends the table at 500 V. */
  readonly rows: readonly ({ readonly upToV: number } & Readonly<Record<SpacingCategory, number>>)[]
  /** Added for every volt above 500, mm/V. */
  readonly perVoltMm: Readonly<Record<SpacingCategory, number>>
  readonly source: Source
}

/** Least spacing by peak or direct voltage. Never edit one row alone. */
export const SPACING_TABLES = {
  'ipc-2221': {
    label: 'IPC-2221A/B, Table 6-1',
    // prettier-ignore
    rows: [
      { upToV: 15, B1: 0.05, B2: 0.1, B3: 0.1, B4: 0.05, A5: 0.13, A6: 0.13, A7: 0.13 },
      { upToV: 30, B1: 0.05, B2: 0.1, B3: 0.1, B4: 0.05, A5: 0.13, A6: 0.25, A7: 0.13 },
      { upToV: 50, B1: 0.1, B2: 0.6, B3: 0.6, B4: 0.13, A5: 0.13, A6: 0.4, A7: 0.13 },
      { upToV: 100, B1: 0.1, B2: 0.6, B3: 1.5, B4: 0.13, A5: 0.13, A6: 0.5, A7: 0.13 },
      { upToV: 150, B1: 0.2, B2: 0.6, B3: 3.2, B4: 0.4, A5: 0.4, A6: 0.8, A7: 0.4 },
      { upToV: 170, B1: 0.2, B2: 1.25, B3: 3.2, B4: 0.4, A5: 0.4, A6: 0.8, A7: 0.4 },
      { upToV: 250, B1: 0.2, B2: 1.25, B3: 6.4, B4: 0.4, A5: 0.4, A6: 0.8, A7: 0.4 },
      // A7 reads 0.8 here and 0.38 in the predecessor; the larger is kept.
      { upToV: 300, B1: 0.2, B2: 1.25, B3: 12.5, B4: 0.4, A5: 0.4, A6: 0.8, A7: 0.8 },
      { upToV: 500, B1: 0.25, B2: 2.5, B3: 12.5, B4: 0.8, A5: 0.8, A6: 1.5, A7: 0.8 },
    ],
    perVoltMm: { B1: 0.0025, B2: 0.005, B3: 0.025, B4: 0.00305, A5: 0.00305, A6: 0.00305, A7: 0.00305 },
    source: published('IPC-2221B, Table 6-1, as the source of KiCad holds it'),
  },
  'ipc-d-275': {
    label: 'IPC-D-275 (predecessor)',
    // prettier-ignore
    rows: [
      { upToV: 15, B1: 0.1, B2: 0.64, B3: 0.64, B4: 0.13, A5: 0.13, A6: 0.13, A7: 0.13 },
      { upToV: 30, B1: 0.1, B2: 0.64, B3: 0.64, B4: 0.13, A5: 0.13, A6: 0.25, A7: 0.13 },
      { upToV: 50, B1: 0.1, B2: 0.64, B3: 0.64, B4: 0.13, A5: 0.13, A6: 0.38, A7: 0.13 },
      { upToV: 100, B1: 0.1, B2: 0.64, B3: 1.5, B4: 0.13, A5: 0.13, A6: 0.5, A7: 0.13 },
      { upToV: 150, B1: 0.2, B2: 0.64, B3: 3.18, B4: 0.38, A5: 0.38, A6: 0.75, A7: 0.38 },
      { upToV: 170, B1: 0.2, B2: 1.27, B3: 3.18, B4: 0.38, A5: 0.38, A6: 0.75, A7: 0.38 },
      { upToV: 250, B1: 0.2, B2: 1.27, B3: 6.4, B4: 0.38, A5: 0.38, A6: 0.75, A7: 0.38 },
      { upToV: 300, B1: 0.2, B2: 1.27, B3: 12.7, B4: 0.38, A5: 0.38, A6: 0.75, A7: 0.38 },
      { upToV: 500, B1: 0.25, B2: 2.54, B3: 12.7, B4: 0.75, A5: 0.75, A6: 1.5, A7: 0.75 },
    ],
    perVoltMm: { B1: 0.0025, B2: 0.005, B3: 0.0254, B4: 0.00305, A5: 0.00305, A6: 0.00305, A7: 0.00305 },
    source: published('IPC-D-275, conductor spacing table, printed on the si-list mail list, August 2002'),
  },
} as const satisfies Record<string, SpacingTable>
export type SpacingEdition = keyof typeof SPACING_TABLES
