import { expect, test } from 'vitest'
import { fitInWords } from '@/app/programmes/[code]/board/[evidence]/fit-in-words'
import type { PlacementFit } from '@/shared/board/placement/fit-placement'

const FIT: PlacementFit = {
  name: 'centres.csv',
  components: 6,
  unit: 'mm',
  unitBy: 'file',
  against: 'pins',
  compared: 6,
  met: 6,
  liesOn: true,
  move: undefined,
}
const MOVE = { bottomMirrored: false, top: [-100, 20], bottom: [-100, 20] } as const

test.each<readonly [string, Partial<PlacementFit>, string]>([
  ['that lies there', {}, '6 of 6 centres lie within the pins of their components.'],
  [
    'whose unit only the board tells',
    { unit: 'mil', unitBy: 'fit', against: 'outline' },
    'Unit not said: mil by its fit on the board, to be confirmed. 6 of 6 centres lie within the outline.',
  ],
  [
    'whose unit nothing tells',
    { unit: undefined, unitBy: undefined, against: 'outline', liesOn: false },
    'Unit not said, and the board does not tell it: choose it. It does not lie on the board: 6 of 6 centres lie within the outline. Nothing of it is used.',
  ],
  [
    'that lies elsewhere',
    { liesOn: false, met: 1, move: MOVE },
    'It does not lie on the board: 1 of 6 centres lie within the pins of their components. Nothing of it is used. By −100 mm in x and 20 mm in y it would: choose so if that is right.',
  ],
  [
    'that was moved',
    { met: 1, move: { ...MOVE, bottomMirrored: true, bottom: [40, 20] } },
    'Moved onto the board, as was confirmed: with the bottom seen from below, the top by −100 mm in x and 20 mm in y, the bottom by 40 mm in x and 20 mm in y. As written 1 of 6 centres lie within the pins of their components.',
  ],
  [
    'that nothing can be held against',
    { against: 'nothing', liesOn: false },
    'Neither a pin of its components nor a closed outline to hold its centres against: nothing of it is used.',
  ],
])('a placement %s is told so', (_, fit, said) => {
  expect(fitInWords({ ...FIT, ...fit })).toBe(said)
})
