import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { readBoardFile, type ReadFile } from '@/shared/board/read-files'
import { boardFrom, readAs } from './drawn-board'
import { JUDGED_BOARD } from './judged-board'
import { netlist, record } from './netlist-text'
import { at, drillMm, gerber } from './small-board'

/*
 * OWASP ASVS 5.0.0, V5.2.1 and V5.3: what is sent is bounded, and nothing in it makes the reader crash or go on without
 * end. Each of these is read or refused in a second or two on a machine of its own; those below were made to hit one loop
 * each, which took minutes or for ever.
 */
const PATIENCE_MS = 20_000
vi.setConfig({ testTimeout: 60_000 })

const read = (text: string, name = 'x.gbr'): ReadFile => {
  const begun = performance.now()
  const file = readBoardFile({ name, text })
  expect(performance.now() - begun).toBeLessThan(PATIENCE_MS)
  return file
}
const refused = (text: string): string => {
  const file = read(text)
  expect(file.format).toBe('unread')
  return file.format === 'unread' ? file.reason : ''
}
const times = (count: number, line: (n: number) => string): string =>
  Array.from({ length: count }, (_, n) => line(n)).join('\n')

describe('Gerber files that ask for too much', () => {
  test('a repeat of nothing, as often as can be written', () => {
    expect(read(gerber('%SRX999999999Y999999999I0J0*%', '%SR*%')).format).toBe('gerber')
  })
  test('a repeat of something, as often as can be written', () => {
    expect(
      refused(gerber('%ADD10C,1*%', 'D10*', '%SRX99999Y99999I1J1*%', `${at(0, 0)}D03*`, '%SR*%')),
    ).toMatch(/objects/)
  })
  test('blocks that each hold the one before twice', () => {
    const blocks = times(64, (n) => `%ABD${n + 11}*%\nD${n + 10}*\n${at(0, 0)}D03*\n${at(1, 0)}D03*\n%AB*%`)
    expect(refused(gerber('%ADD10C,1*%', blocks))).toMatch(/objects/)
  })
  test('a block that flashes itself', () => {
    expect(refused(gerber('%ABD11*%', 'D11*', `${at(0, 0)}D03*`, '%AB*%'))).toMatch(/D11/)
  })
  test('blocks without an end in one another', () => {
    expect(refused(gerber(times(100, (n) => `%ABD${n + 10}*%`)))).toMatch(/deep/)
  })
  test('a macro whose brackets never close, and one that calls itself', () => {
    expect(refused(gerber(`%AMA*1,1,${'('.repeat(200_000)}1,0,0*%`, '%ADD10A*%'))).toMatch(/worked out/)
    expect(refused(gerber('%AMA*A,1,1,0,0*%', '%ADD10A*%'))).toMatch(/worked out|primitive/)
    expect(read(gerber('%AMA*$1=$1+$1*1,1,$1,0,0*%', '%ADD10A,1*%')).format).toBe('gerber')
  })
  test('a macro that doubles a size until it is none', () => {
    expect(refused(gerber(`%AMA*${'$1=$1x$1*'.repeat(40)}1,1,$1,0,0*%`, '%ADD10A,9*%'))).toMatch(
      /worked out|beyond/,
    )
  })
  test('a macro of very many parts, and a target of very many rings', () => {
    expect(refused(gerber(`%AMA*${'1,1,1,0,0*'.repeat(50_000)}%`, '%ADD10A*%'))).toMatch(/primitives/)
    expect(read(gerber('%AMA*6,0,0,900,0.001,0,100000000,0,0,0*%', '%ADD10A*%')).format).not.toBe('other')
    expect(refused(gerber('%AMA*6,0,0,999999,0,0,1000000,0,0,0*%', '%ADD10A*%'))).toMatch(/target/)
  })
  test('an arc of a radius that no chord can follow', () => {
    const far = '9'.repeat(14)
    const file = read(gerber('%ADD10C,1*%', 'D10*', 'G75*', `${at(0, 0)}D02*`, `G03X1Y0I0J${far}D01*`))
    expect(['gerber', 'unread']).toContain(file.format)
  })
  test('numbers of very many digits', () => {
    expect(refused(gerber('%ADD10C,1*%', 'D10*', `X${'9'.repeat(400)}Y0D03*`))).toMatch(/beyond/)
    expect(refused(gerber(`%ADD10C,${'9'.repeat(400)}*%`))).toMatch(/no number|beyond/)
    expect(refused(gerber('%LS1E300*%'))).toMatch(/scale/)
  })
  test('a great many commands that nobody knows, and one that is very long', () => {
    expect(refused(gerber(times(200_000, (n) => `Q${n}*`)))).toMatch(/kinds of commands/)
    expect(refused(gerber(`%OFA${'0'.repeat(200_000)}X*%`))).toMatch(/whole image/)
  })
})

describe('drill files that ask for too much', () => {
  const drill = (...lines: string[]): string => drillMm({ T1: 1 }, 'T1', 'X1.0Y1.0', ...lines)
  test('repeats of repeats', () => {
    expect(refused(drill(times(100_000, () => 'R1X1.0')))).toMatch(/deep/)
    expect(refused(drill('R999999999X1.0'))).toMatch(/holes/)
  })
  test('lines of very many digits', () => {
    expect(refused(drill(`X${'1'.repeat(300_000)}`))).toMatch(/longer/)
    expect(refused(drill(`X${'9'.repeat(400)}Y1.0`))).toMatch(/beyond/)
    expect(read(drill(`;${'FORMAT='.repeat(300_000)}`)).format).toBe('drill')
  })
})

test('a great deal of nothing is no board file', () => {
  expect(read('\n'.repeat(1_000_000)).format).toBe('other')
  expect(read(' '.repeat(1_000_000)).format).toBe('other')
  expect(readBoardFile({ name: 'mask'.repeat(20_000), text: gerber() }).format).toBe('gerber')
})

test('netlists: as many places as can be, and lines without an end', () => {
  expect(
    refused(
      netlist(
        'CUST 0',
        times(400_001, () => record({ x: 1, y: 1 })),
      ),
    ),
  ).toMatch(/places/)
  expect(refused(netlist('CUST 0', record({ x: 1, y: 1 }), `317${'X'.repeat(2_000_000)}`))).toMatch(
    /column 42/,
  )
})

describe('tables of components that ask for too much', () => {
  const HEADING = 'Ref,X (mm),Y (mm),Side'
  test('more rows than a board has components, and more lines than are read', () => {
    expect(refused(`${HEADING}\n${times(100_001, (n) => `R${n},1,1,top`)}`)).toMatch(
      /more than 100000 components/,
    )
    expect(refused(`${HEADING}\n${times(200_001, () => '')}`)).toMatch(/lines/)
    expect(refused(`Ref,Qty\n${times(40, () => 'R1-R9000,1')}`)).toMatch(/names more than/)
  })
  test('a line without an end, before the headings and beneath them', () => {
    expect(read('a,'.repeat(1_000_000)).format).toBe('other')
    expect(read(`${'"'.repeat(2_000_000)}\n${HEADING}\nR1,1,1,top`).format).toBe('other')
    expect(read(`${'"'.repeat(100_000)}\n${HEADING}\nR1,1,1,top`).format).toBe('placement')
    expect(refused(`${HEADING}\nR1,1,1,${'t'.repeat(2_000_000)}`)).toMatch(/characters/)
  })
  test('headings in every line, as wide as a line can be', () => {
    expect(read(times(60, () => 'x,'.repeat(9000))).format).toBe('other')
    expect(read(times(60, () => 'x y ref '.repeat(2000))).format).toBe('other')
  })
  test('numbers of very many digits, and names of what every object has', () => {
    expect(refused(`${HEADING}\nR1,${'9'.repeat(400)},1,top`)).toMatch(/no number/)
    const file = read(`${HEADING}\n__proto__,1,1,top\nconstructor,2,2,top`)
    expect(readAs([file]).placement!.placed).toEqual([])
    expect(refused(`${HEADING}\nR1,1,1,constructor`)).toMatch(/no side/)
  })
})

/** Files of every kind, to be spoiled. */
const SOUND = [
  gerber(
    '%TF.FileFunction,Copper,L1,Top*%',
    '%AMR*21,1,$1,$2,0,0,$3*%',
    '%ADD10R,1X2X45*%',
    '%ADD11C,0.3X0.1*%',
    'D10*',
    `${at(1, 1)}D03*`,
    'D11*',
    'G75*',
    `${at(0, 0)}D02*`,
    `G03${at(1, 1)}I0J1000000D01*`,
    'G36*',
    `${at(0, 0)}D02*`,
    `G01${at(4, 0)}D01*`,
    `${at(4, 4)}D01*`,
    'G37*',
    '%SRX3Y2I5J5*%',
    `${at(2, 2)}D03*`,
    '%SR*%',
  ),
  drillMm({ T1: 0.9, T2: 3 }, 'T1', 'X1.0Y1.0', 'R3X2.0', 'T2', 'X5.0Y5.0G85X7.0Y5.0'),
  netlist('CUST 1', record({ net: 'A', hole: 900, plated: true, x: 1000, y: 1000 }), 'P  NNAME1 LONG'),
  '## Unit = mm\n# Ref   PosX    PosY  Rot   Side\nR1  1.0  2.0  90.0  top\nC1  3.0  2.0  0  bottom\n',
  '"Designator";"Mid X";"Mid Y";"Layer"\n"R1";"1,5mm";"2mm";"T"\n',
  'References,Part number,Quantity\n"R1–R4, R7",A-1,5\n',
]

test('law: cut off, written over, doubled or of random bytes, a file is read or refused with a line', () => {
  const spoiled = fc.record({
    of: fc.constantFrom(...SOUND),
    cut: fc.nat(),
    over: fc.string({ unit: 'binary', maxLength: 12 }),
    again: fc.nat(3),
  })
  fc.assert(
    fc.property(spoiled, ({ of, cut, over, again }) => {
      const place = cut % of.length
      const texts = [
        of.slice(0, place),
        of.slice(0, place) + over + of.slice(place + over.length),
        of.slice(0, place) + of.slice(place).repeat(again + 1),
        of.slice(place) + over,
      ]
      for (const text of texts) {
        const file = read(text)
        if (file.format === 'unread') expect(file.line).toBeGreaterThan(0)
        expect(() => readAs([file])).not.toThrow()
      }
    }),
    { numRuns: 150 },
  )
})

test('law: random bytes under any beginning are read or refused', () => {
  const bytes = fc.string({ unit: 'binary', maxLength: 400 })
  fc.assert(
    fc.property(
      fc.constantFrom('', 'Ref,X,Y\n', 'M48\n', '%FSLAX46Y46*%\n%MOMM*%\n', 'P  UNITS SI\n317A\n'),
      bytes,
      (head, rest) => {
        expect(['gerber', 'drill', 'netlist', 'placement', 'parts list', 'unread', 'other']).toContain(
          read(head + rest).format,
        )
      },
    ),
  )
})

test('a board of which a file was refused is still put together from the others', () => {
  const whole = boardFrom(JUDGED_BOARD)
  expect(whole.holes.length).toBe(6)
  expect(readAs([readBoardFile({ name: 'x.gbr', text: gerber('%SR*') })]).holes).toEqual([])
})
