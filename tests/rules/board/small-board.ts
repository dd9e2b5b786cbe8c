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

/** The least board: one land of 1.6 mm on the top with a hole of 0.9 mm. */
export const ONE_HOLE = {
  top: gerber('%TF.FileFunction,Copper,L1,Top*%', '%ADD10C,1.6*%', 'D10*', `${at(10, 10)}D03*`),
  drill: drillMm({ T1: 0.9 }, 'T1', 'X10.0Y10.0'),
}
