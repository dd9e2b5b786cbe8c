import type { ReactNode } from 'react'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { BridgingGaps } from './bridging-gaps'
import { ConductorFits } from './conductor-fits'
import { CyclesChart } from './cycles-chart'
import { DocumentsAndLimits } from './documents-and-limits'
import { ExpansionChart } from './expansion-chart'
import { ExposureChart } from './exposure-chart'
import { BoardFinishWindow, LeadFinishWindows } from './finish-windows'
import { HoleChart } from './hole-chart'
import { HoleWindows } from './hole-windows'
import { JointSections } from './joint-sections'
import { HoleMargins, LeadFinishMargins } from './part-margins'
import { ProcessCostChart } from './process-cost-chart'
import { SpacingCharts } from './spacing-chart'
import { StorageCharts } from './storage-charts'
import { SurvivalChart } from './survival-chart'

type Picture = (props: { view: ProgrammeView }) => ReactNode

/** What an item shows beside its findings, in order; each shows nothing while its values are missing. */
const PICTURES: Readonly<Record<string, readonly Picture[]>> = {
  documents: [DocumentsAndLimits],
  'joint-budget': [SurvivalChart, CyclesChart],
  laminate: [ExposureChart, ExpansionChart],
  'soldering-process': [ProcessCostChart],
  'conductors-and-spacings': [ConductorFits, SpacingCharts, BridgingGaps],
  'holes-and-lands': [HoleWindows, HoleChart, HoleMargins],
  'board-finish': [BoardFinishWindow],
  'lead-finish': [LeadFinishWindows, LeadFinishMargins],
  'joint-geometry': [JointSections],
  storage: [StorageCharts],
}

export function ItemPictures({ item, view }: { item: string; view: ProgrammeView }) {
  return (PICTURES[item] ?? []).map((OnePicture) => <OnePicture key={OnePicture.name} view={view} />)
}
