/** Boards of our own, as the text of their files: small enough to be worked out by hand. */

const HEAD = '%FSLAX46Y46*%\n%MOMM*%\n'

/** A coordinate in millionths of a millimetre, as FSLAX46Y46 wants it. */
export const at = (x: number, y: number): string => `X${Math.round(x * 1e6)}Y${Math.round(y * 1e6)}`

export const gerber = (...lines: string[]): string => `${HEAD}${lines.join('\n')}\nM02*\n`

export const drillMm = (tools: Readonly<Record<string, number>>, ...lines: string[]): string =>
  [
    'M48',
    'METRIC,TZ',
    ...Object.entries(tools).map(([tool, mm]) => `${tool}C${mm.toFixed(3)}`),
    '%',
    'G90',
    ...lines,
    'M30',
    '',
  ].join('\n')
