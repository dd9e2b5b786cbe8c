import { describe, expect, test } from 'vitest'
import { detectDelimiter } from '@/lib/readings/delimiter'

describe('the separator is judged by the first lines', () => {
  test.each([
    ['time,density\n1,2\n', ','],
    ['time;density\n1;2\n', ';'],
    ['time\tdensity\n1\t2\n', '\t'],
    ['time;density\n10:00;0,82\n10:01;0,83\n', ';'],
    ['time\tplace\n1\ta, b\n2\tc, d\n', '\t'],
    ['time,note\n1,"a;b;c"\n2,"d;e;f"\n', ','],
    ['"time;x",density\n1,2\n', ','],
    ['\n\r\ntime;density\r\n1;2', ';'],
    ['density\n0.82\n', ','],
    ['density\r0.82\r', ','],
    ['', ','],
  ])('%j: %j', (head, delimiter) => {
    expect(detectDelimiter(head)).toBe(delimiter)
  })
})
