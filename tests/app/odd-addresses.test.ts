import { describe, expect, test } from 'vitest'
import { addressPart } from '@/app/address-part'
import { choiceAsked } from '@/app/programmes/[code]/defect-charts/chart-asked'
import { chartingAsked } from '@/app/programmes/[code]/logs/[log]/chart-asked'
import type { Charting } from '@/shared/charts/log-chart'

// RFC 3986, section 2.1: a percent sign and two hexadecimal digits stand for an octet; RFC 3629 for what UTF-8 is.
describe('a part of an address', () => {
  test.each([
    ['LX-41', 'LX-41'],
    ['FLUX%205%25', 'FLUX 5%'],
    ['Z%C3%BCg', 'Züg'],
    ['%ff', '%ff'],
    ['5%', '5%'],
  ])('%j stands for %j', (part, means) => expect(addressPart(part)).toBe(means))
})

describe.each(['__proto__', 'constructor', 'toString'])('what every object has, such as %s, is', (name) => {
  test('no chart of defects', () => {
    const specified = { chart: 'u' } as Parameters<typeof choiceAsked>[1][0]
    expect(choiceAsked({ chart: name }, [specified], [])).toBe(specified)
  })

  test('no set of run rules', () => {
    const specified = { rules: 'nelson', choice: { chart: 'individuals' } } as unknown as Charting
    expect(chartingAsked({ rules: name }, specified)).toBeUndefined()
  })
})
