/** Records of a netlist by their columns, for boards of our own. */

interface RecordPart {
  readonly code?: string
  readonly net?: string
  readonly component?: string
  readonly pin?: string
  /** In steps of the file. */
  readonly hole?: number
  readonly plated?: boolean
  readonly layer?: number
  readonly x: number
  readonly y: number
}

const steps = (value: number, digits: number): string => String(Math.abs(value)).padStart(digits, '0')
const signed = (value: number): string => `${value < 0 ? '-' : '+'}${steps(value, 6)}`

/** One record of IPC-D-356A: net from column 4, component from 21, pin from 28, hole from 33, access from 39, place from 42. */
export const record = ({
  code = '317',
  net = 'N/C',
  component = '',
  pin,
  hole,
  plated,
  layer = 0,
  x,
  y,
}: RecordPart) =>
  [
    code,
    net.padEnd(14),
    '   ',
    component.padEnd(6),
    pin === undefined ? ' ' : '-',
    (pin ?? '').padEnd(4),
    ' ',
    hole === undefined ? '      ' : `D${steps(hole, 4)}${plated === undefined ? ' ' : plated ? 'P' : 'U'}`,
    `A${steps(layer, 2)}`,
    `X${signed(x)}Y${signed(y)}`,
    'X0630Y0000R000S0',
  ].join('')

export const netlist = (units: string | undefined, ...lines: string[]): string =>
  ['C  Made for a test', ...(units ? [`P  UNITS ${units}`] : []), ...lines, '999', ''].join('\n')
