import type { LotTestStory, Row } from '@/seed/level-transmitter/lot-story'
import { rounded, scatterFrom } from '@/seed/readings'
import { buoyancyMN, tensionMN } from '@/shared/physics/wetting-force'

const LEAD_MM = 0.6
const SPEED_MM_PER_S = 20
const HELD_S = 6
const SAMPLE_EVERY_S = 0.04
/** A fluxed but cold surface sheds the solder at this angle. */
const COLD_ANGLE_DEG = 125
const NOISE_MN = 0.006

/** Round leads of the resistors, as IEC 60068-2-69 gives their forces. */
const LEADS = {
  perimeterMm: rounded(Math.PI * LEAD_MM, 3),
  sectionMm2: rounded((Math.PI / 4) * LEAD_MM ** 2, 4),
  depthMm: 4,
  surfaceTensionNPerM: 0.4,
  densityGPerMl: 8,
}

/** When each lead is warm enough to be wetted, how fast the solder then takes, and at which angle it rests. */
const SPECIMENS = [
  { warmAtS: 0.24, takesInS: 0.21, restsAtDeg: 24 },
  { warmAtS: 0.28, takesInS: 0.24, restsAtDeg: 27 },
  { warmAtS: 0.25, takesInS: 0.26, restsAtDeg: 25 },
  { warmAtS: 0.33, takesInS: 0.3, restsAtDeg: 31 },
  { warmAtS: 0.27, takesInS: 0.23, restsAtDeg: 26 },
]

/** Five leads, aged in steam, held in solder: the balance's file, lead by lead. */
export function leadsOnBalance(): LotTestStory {
  const scatter = scatterFrom(61)
  return {
    method: 'wetting-balance',
    instrument: 'WB-04',
    conditions: {
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
      ...LEADS,
      immersionSpeedMmPerS: SPEED_MM_PER_S,
      forceSign: 'down-positive',
    },
    rows: SPECIMENS.flatMap((specimen, index) =>
      Array.from({ length: HELD_S / SAMPLE_EVERY_S + 1 }, (_, sample): Row => {
        const timeS = rounded(sample * SAMPLE_EVERY_S, 2)
        const forceMN = rounded(forceAt(timeS, specimen) + NOISE_MN * scatter(), 3)
        return { specimen: String(index + 1), timeS, forceMN }
      }),
    ),
  }
}

/**
 * The balance of forces as the lead goes down: buoyancy grows with the depth,
 * the surface first bends away, and takes exponentially once the lead is warm.
 */
function forceAt(timeS: number, { warmAtS, takesInS, restsAtDeg }: (typeof SPECIMENS)[number]): number {
  const depthMm = Math.min(LEADS.depthMm, SPEED_MM_PER_S * timeS)
  const [cold, rest] = [cosine(COLD_ANGLE_DEG), cosine(restsAtDeg)]
  const bent = cold * Math.min(1, timeS / (LEADS.depthMm / SPEED_MM_PER_S))
  const wetted = timeS < warmAtS ? bent : rest - (rest - cold) * Math.exp((warmAtS - timeS) / takesInS)
  return tensionMN(LEADS) * wetted - buoyancyMN({ ...LEADS, depthMm })
}

const cosine = (degrees: number): number => Math.cos((degrees * Math.PI) / 180)
