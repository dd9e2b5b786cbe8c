import { strToU8, zipSync } from 'fflate'

/** A board of our own as large as asked for, as the files that a maker would be sent. Lengths in mm. */
export interface LargeBoard {
  readonly acrossMm: number
  readonly upMm: number
  /** Holes for leads; there is a via to every fourth of them. */
  readonly holes: number
}

type Place = readonly [x: number, y: number]

const PITCH_MM = 2.54
const at = ([x, y]: Place): string => `X${Math.round(x * 1e6)}Y${Math.round(y * 1e6)}`
const gerber = (use: string, ...lines: string[]): string =>
  ['%FSLAX46Y46*%', '%MOMM*%', `%TF.FileFunction,${use}*%`, ...lines, 'M02*', ''].join('\n')
const line = (from: Place, to: Place): string[] => [`${at(from)}D02*`, `${at(to)}D01*`]
const flash = (place: Place): string => `${at(place)}D03*`
const boxed = (x: number, y: number, right: number, top: number): string[] => [
  `${at([x, y])}D02*`,
  ...(
    [
      [right, y],
      [right, top],
      [x, top],
      [x, y],
    ] as const
  ).map((place) => `${at(place)}D01*`),
]

/** Leads on a grid, row by row, with as much room between rows as the board leaves. */
function leadsOf({ acrossMm, upMm, holes }: LargeBoard): Place[] {
  const columns = Math.floor((acrossMm - 8) / PITCH_MM)
  const rows = Math.ceil(holes / columns)
  const step = (upMm - 8) / rows
  return Array.from({ length: holes }, (_, n): Place => [
    4 + PITCH_MM * (n % columns),
    4 + step * Math.floor(n / columns),
  ])
}

/** Two sides of copper, mask and legend, an outline, and plated holes; a plane below with clearances, webs and conductors. */
export function largeBoard(board: LargeBoard): Readonly<Record<string, string>> {
  const leads = leadsOf(board)
  const vias = leads.filter((_, n) => n % 4 === 0).map(([x, y]): Place => [x + 1.27, y + 1.4])
  const toPlane = leads.filter((_, n) => n % 5 === 0)
  const apart = leads.filter((_, n) => n % 5 !== 0)
  const conductors = leads.flatMap(([x, y], n) => {
    const via = vias[Math.floor(n / 4)]
    if (n % 4 !== 0 || !via) return []
    const bend: Place = [x + 0.6, y + 1.4]
    return [...line([x, y], bend), `${at(via)}D01*`]
  })
  const tools = [
    '%ADD10C,1.6*%',
    '%ADD11C,0.25*%',
    '%ADD12C,0.7*%',
    '%ADD13C,2.2*%',
    '%ADD14C,1.2*%',
    '%ADD15C,1.7*%',
  ]
  const { acrossMm, upMm } = board
  return {
    'top.gbr': gerber(
      'Copper,L1,Top',
      ...tools,
      'D10*',
      ...leads.map(flash),
      'D12*',
      ...vias.map(flash),
      'D11*',
      ...conductors,
    ),
    'bottom.gbr': gerber(
      'Copper,L2,Bot',
      ...tools,
      'G36*',
      ...boxed(1, 1, acrossMm - 1, upMm - 1),
      'G37*',
      '%LPC*%',
      'D13*',
      ...leads.map(flash),
      'D14*',
      ...vias.map(flash),
      '%LPD*%',
      'D10*',
      ...leads.map(flash),
      'D12*',
      ...vias.map(flash),
      'D11*',
      ...toPlane.flatMap(([x, y]) => [
        ...line([x - 1.3, y], [x + 1.3, y]),
        ...line([x, y - 1.3], [x, y + 1.3]),
      ]),
    ),
    'mask-top.gbr': gerber('Soldermask,Top', ...tools, 'D15*', ...leads.map(flash)),
    'mask-bottom.gbr': gerber('Soldermask,Bot', ...tools, 'D15*', ...leads.map(flash)),
    'legend-top.gbr': gerber(
      'Legend,Top',
      '%ADD10C,0.15*%',
      'D10*',
      ...apart.flatMap(([x, y]) => boxed(x - 0.9, y - 0.9, x + 0.9, y + 0.9)),
    ),
    'outline.gbr': gerber('Profile,NP', '%ADD10C,0.1*%', 'D10*', ...boxed(0, 0, acrossMm, upMm)),
    'board-PTH.drl': [
      'M48',
      'METRIC,TZ',
      'T1C0.900',
      'T2C0.400',
      '%',
      ...[leads, vias].flatMap((places, n) => [
        `T${n + 1}`,
        ...places.map(([x, y]) => `X${x.toFixed(4)}Y${y.toFixed(4)}`),
      ]),
      'M30',
      '',
    ].join('\n'),
  }
}

export const archiveOf = (files: Readonly<Record<string, string>>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])))
