import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { LogChart } from '@/app/programmes/[code]/logs/[log]/log-chart'
import { Certificates } from '@/app/works/people/[person]/[record]/certificates'
import { factsWith } from '@/tests/rules/facts-builder'
import { logOf } from '@/tests/rules/log-builder'

describe('what comes first in an empty place', () => {
  it('leads from a log of a programme to the machine that keeps it, for there is no form below', () => {
    const log = logOf('flux-density', [], { atWorks: { machine: 'Fluxer 1', log: 'DENSITY' } })
    const props = { view: { state: { facts: factsWith() } }, log, asked: {} } as never
    const page = renderToStaticMarkup(createElement(LogChart, props))
    expect(page).toContain('href="/works/machines/Fluxer%201/logs/DENSITY"')
    expect(page).not.toContain('below')
  })
  it('says of a training without a certificate what to attach, and who does', () => {
    const page = renderToStaticMarkup(
      createElement(Certificates, {
        worker: 'Iris Holm',
        record: 'record-1',
        certificates: [],
        refused: 'Quality does that.',
        answer: {},
      }),
    )
    expect(page).toContain('First attach the file that proves the training. Quality does that.')
  })
})
