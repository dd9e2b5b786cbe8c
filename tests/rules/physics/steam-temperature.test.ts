import { expect, test } from 'vitest'
import { boilingPointC, steamTemperatureC } from '@/shared/physics/steam-temperature'

// Water boils at 100 °C at sea level by definition of the normal boiling point, near 93.3 °C at 2000 m
// (standard atmosphere 596 mmHg, steam tables; from memory).
test('water boils cooler the higher the laboratory lies', () => {
  expect(boilingPointC(0)).toBeCloseTo(100, 1)
  expect(boilingPointC(2000)).toBeCloseTo(93.3, 0)
})
// J-STD-002, steam temperature by altitude (from memory): 93 °C to 305 m, 92 to 610, 91 to 914, 90 to
// 1219, 89 to 1524, 88 to 1829; the lower end of each band, within the 1 K of its rounding.
test.each([
  [0, 93],
  [305, 92],
  [610, 91],
  [914, 90],
  [1219, 89],
  [1524, 88],
])('steam at %s m is run at %s °C', (heightM, asked) => {
  expect(Math.abs(steamTemperatureC(heightM) - asked)).toBeLessThanOrEqual(1)
})
test.each([Number.NaN, 20_000, -1000])('a height of %s m is refused', (heightM) => {
  expect(() => steamTemperatureC(heightM)).toThrow(RangeError)
})
