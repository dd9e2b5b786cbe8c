import { describe, expect, test } from 'vitest'
import { readBoardFile } from '@/shared/board/read-files'
import { readPartsTable } from '@/shared/board/placement/read-parts-table'
import { readPlacement } from '@/shared/board/placement/read-placement'
import { sideFrom } from '@/shared/board/placement/side-word'

const R1 = { reference: 'R1', at: [12.5, -3], rotationDeg: 90, side: 'top' }
/** The same component in every form that such tables come in. */
const FORMS: readonly (readonly [string, string, unknown])[] = [
  ['commas', 'Ref,X (mm),Y (mm),Rotation,Side\nR1,12.5,-3,90,top', R1],
  ['quotation marks', '"Designator","Mid X","Mid Y","Rotation","Layer"\n"R1","12.5mm","-3mm","90","TopLayer"', R1],
  ['semicolons and decimal commas', 'Reference;Pos X [mm];Pos Y [mm];Angle;Side\nR1;12,5;-3,0;90;T', R1],
  ['tabs', 'RefDes\tCenter-X(mm)\tCenter-Y(mm)\tOrientation\tBoard side\nR1\t12.50\t-3\t90.0\tFront', R1],
  [
    'aligned blanks under a comment',
    '### Placement\n## Unit = mm, Angle = deg.\n# Ref   PosX      PosY     Rot   Side\nR1      12.5000   -3.0000  90.0  top\n## End',
    R1,
  ],
  [
    'aligned blanks with headings of two words',
    'Units used: mm\n\nDesignator  Mid X   Mid Y  Rotation  Layer\n\nR1          12.5    -3     90        top',
    R1,
  ],
  ['a place of its own beside the middle', 'Name,Ref X,Ref Y,Mid X,Mid Y,Rot,Layer\nR1,1mm,1mm,12.5mm,-3mm,90,T', R1],
  ['an angle with its sign', 'Ref|X_mm|Y_mm|Rot|Side\nR1|12.5|-3|90°|component side', R1],
] // prettier-ignore

test.each(FORMS)('a table with %s', (_, text, row) => {
  expect(readPlacement(text)).toMatchObject({ unit: 'mm', rows: [row] })
  expect(readPlacement(text.replaceAll('\n', '\r\n'))).toMatchObject({ unit: 'mm', rows: [row] })
  expect(readBoardFile({ name: 'any.txt', text })).toMatchObject({
    format: 'placement',
    proposed: { role: { kind: 'placement', side: undefined, unit: undefined, moved: false }, by: 'content' },
  })
})

describe('units', () => {
  test('stand with the headings, before them or in the cells, or are not said', () => {
    const unitOf = (text: string) => readPlacement(text)?.unit
    expect(unitOf('Ref,X (mil),Y (mil)\nR1,1,2')).toBe('mil')
    expect(unitOf('Unit: inch\nRef,X,Y\nR1,1,2')).toBe('inch')
    expect(unitOf('Ref,X,Y\nR1,100mil,200mil')).toBe('mil')
    expect(unitOf('Ref,X,Y\nR1,1,2')).toBeUndefined()
    // A word that only begins like one is none.
    expect(unitOf('Ref,X in order,Y in order,Pos X,Pos Y\nR1,1,2,3,4')).toBeUndefined()
  })
  test('of a cell go before those of the file', () => {
    expect(readPlacement('Ref,X (mm),Y (mm)\nR1,100mil,0.1in')!.rows[0]!.at).toEqual([
      expect.closeTo(2.54, 9),
      expect.closeTo(2.54, 9),
    ])
  })
})

test('a number is read with as many decimals as programs print of it', () => {
  expect(readPlacement('Ref,X,Y\nR1,293.56283199999996,-1.5e1')!.rows[0]!.at).toEqual([
    293.56283199999996, -15,
  ])
})

test('sides by their words', () => {
  expect(['Top', 'T', 'front', 'TopLayer', 'Component Side', 'F.Cu'].map(sideFrom)).toEqual(
    Array.from({ length: 6 }, () => 'top'),
  )
  expect(['bottom', 'B', 'Bot', 'back', 'Solder side', 'Bottom-Layer'].map(sideFrom)).toEqual(
    Array.from({ length: 6 }, () => 'bottom'),
  )
  expect(sideFrom('inner')).toBeUndefined()
})

test('a file that says no side takes it from its name, where that says one', () => {
  const text = 'Ref,X (mm),Y (mm)\nR1,1,2'
  const roleOf = (name: string, of = text) => {
    const file = readBoardFile({ name, text: of })
    return 'proposed' in file ? file.proposed : undefined
  }
  expect(roleOf('board-bottom.csv')).toMatchObject({ role: { side: 'bottom' }, by: 'name' })
  expect(roleOf('stop.csv')).toMatchObject({ role: { side: undefined }, by: 'content' })
  expect(roleOf('board-bottom.csv', 'Ref,X,Y,Side\nR1,1,2,top')).toMatchObject({ role: { side: undefined } })
})

test.each([
  ['a place that is no number', 'Ref,X,Y\nR1,1,2\nR2,one,2', 3, /“one” is no number for x/],
  ['no reference', 'Ref,X,Y\n,1,2', 2, /names no component/],
  ['a side that is none', 'Ref,X,Y,Side\nR1,1,2,inner', 2, /“inner” is no side/],
  ['an angle that is none', 'Ref,X,Y,Rot\nR1,1,2,up', 2, /“up” is no angle/],
  ['more cells than headings', '\n\nRef,X,Y\nR1,1,2,3', 4, /4 cells and the headings are 3/],
  ['an open quotation mark', 'Ref,X,Y\n"R1,1,2', 2, /not closed/],
  ['a unit in some lines only', 'Ref,X,Y\nR1,1,2\nR2,1mm,2mm', 3, /some lines only/],
  ['a place beyond all boards', 'Ref,X (mm),Y (mm)\nR1,1,2e9', 2, /beyond 10 m/],
  ['an aligned line that lacks a cell', '# Ref  X  Y  Side\nR1  1  2  top\nR2  1  2', 3, /3 cells/],
])('%s refuses the file with its line', (_, text, line, reason) => {
  expect(readBoardFile({ name: 'p.csv', text })).toMatchObject({
    format: 'unread',
    line,
    reason: expect.stringMatching(reason),
  })
})

test('what is no table of components is left alone', () => {
  for (const text of [
    'Order 5 of these.',
    'C1:1\nC2:1',
    'Tool,Size\nT1,0.8',
    'The reference of x and y is the lower left corner.\nAll lines are drawn.',
    'Name,X\nR1,2',
    '',
  ])
    expect(readBoardFile({ name: 'readme.csv', text }).format).toBe('other')
})

test('names beyond ASCII are read as they were written, in either encoding', () => {
  const meant = 'Ref,X (mm),Y (mm),Value\nR1,1,2,10 µF'
  const asBytes = (text: string) => Buffer.from(text, 'utf8').toString('latin1')
  const read = (text: string) => {
    const file = readBoardFile({ name: 'p.csv', text })
    return file.format === 'placement' ? file.placement.rows[0]!.value : file.format
  }
  expect(read(asBytes(`\uFEFF${meant}`))).toBe('10 µF')
  expect(read(asBytes(meant))).toBe('10 µF')
  expect(read(Buffer.from(meant, 'latin1').toString('latin1'))).toBe('10 µF')
})

describe('a parts list among the files', () => {
  test('goes by the headings of the specification’s own table', () => {
    expect(readPartsTable('Designator,Qty,Part number\n"R1, R2",2,R-10K\nC1–C3,3,C-100N')).toEqual([
      { names: ['R1', 'R2'], part: 'R-10K', quantity: 2, line: 2 },
      { names: ['C1', 'C2', 'C3'], part: 'C-100N', quantity: 3, line: 3 },
    ])
    expect(readBoardFile({ name: 'x.csv', text: 'Ref;Part\nR1;A' })).toMatchObject({
      format: 'parts list',
      proposed: { role: { kind: 'parts list' }, by: 'content' },
    })
  })
  test('names what it can: a reference of no pattern by its word, a part that is not said by nothing', () => {
    expect(readPartsTable('Reference,Quantity\n"SW_A SW_B",2\n,5')).toEqual([
      { names: ['SW_A', 'SW_B'], quantity: 2, line: 2 },
      { names: [], quantity: 5, line: 3 },
    ])
  })
  test('is refused with its line where a quantity is none', () => {
    expect(readBoardFile({ name: 'x.csv', text: 'Ref,Qty\nR1,some' })).toMatchObject({
      format: 'unread',
      line: 2,
      reason: expect.stringMatching(/no number of pieces/),
    })
  })
})
