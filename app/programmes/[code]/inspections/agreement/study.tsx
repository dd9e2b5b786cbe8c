import { AgreementIntervals } from '@/app/drawing/defect-agreement'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { AgreementStudy, PairAgreement } from '@/shared/inspection/agreement-study'
import { CrossTable } from './cross-table'
import { Disputed } from './disputed'

/** One study: kappa of every pair and of all together, by kind, and the joints to look at together. */
export function Study({ study }: { study: AgreementStudy }) {
  const { pairs, withKnown, withSelf, together, byKind, disputed, joints, inspectors } = study
  const all: PairAgreement[] = [...pairs, ...withKnown, ...withSelf]
  const rows = all.flatMap(({ one, other, kappa }) =>
    kappa?.kappa === undefined
      ? []
      : [{ name: `${one} and ${other}`, kappa: kappa.kappa, interval: kappa.interval }],
  )
  const fleiss =
    inspectors.length > 2 && together?.kappa !== undefined
      ? [{ name: `All ${together.inspectors} together`, kappa: together.kappa, interval: together.interval }]
      : []
  return (
    <Section
      heading={study.study}
      lead={`${joints.length} joints, called by ${inspectors.join(', ')}. Kappa is 1 for full agreement and 0 for what chance alone gives.`}
    >
      {rows.length > 0 && (
        <AgreementIntervals
          title="Kappa with its 95 % interval, sound against defective"
          rows={[...fleiss, ...rows]}
        />
      )}
      <div className="picture-row">
        <RuledTable
          caption="Calls alike"
          narrow="scroll"
          rows={all}
          rowKey={({ one, other }) => `${one} ${other}`}
          columns={[
            { label: 'Between', names: true, cell: ({ one, other }) => `${one} and ${other}` },
            { label: 'Joints', set: 'number', cell: (pair) => pair.joints },
            {
              label: 'Alike',
              set: 'number',
              cell: ({ kappa }) => (kappa ? formatQuantity(kappa.observedAgreement * 100, '%', 3) : '–'),
            },
            {
              label: 'By chance',
              set: 'number',
              cell: ({ kappa }) => (kappa ? formatQuantity(kappa.chanceAgreement * 100, '%', 3) : '–'),
            },
            {
              label: 'Kappa',
              set: 'number',
              cell: ({ kappa }) =>
                kappa?.kappa === undefined ? 'one kind of call only' : formatNumber(kappa.kappa, 3),
            },
          ]}
        />
        {byKind.length > 0 && (
          <RuledTable
            caption="By call, all inspectors"
            narrow="scroll"
            rows={byKind}
            rowKey={({ call }) => call}
            columns={[
              { label: 'Call', names: true, cell: ({ call }) => call },
              {
                label: 'Kappa against all other calls',
                set: 'number',
                cell: ({ kappa }) => (kappa === undefined ? '–' : formatNumber(kappa, 3)),
              },
            ]}
          />
        )}
      </div>
      {withKnown.length > 0 && <AgainstKnown pairs={withKnown} />}
      <Disputed disputed={disputed} inspectors={inspectors} />
      {all.map((pair) => (
        <Disclosure
          key={`${pair.one} ${pair.other}`}
          summary={`Cross table of ${pair.one} and ${pair.other}`}
        >
          <CrossTable pair={pair} />
        </Disclosure>
      ))}
    </Section>
  )
}

/** What each let pass, and what each would have had reworked for nothing. */
function AgainstKnown({ pairs }: { pairs: readonly PairAgreement[] }) {
  const cell = ({ table }: PairAgreement, said: 0 | 1, known: 0 | 1): number => table[said]?.[known] ?? 0
  const of = (part: number, whole: number) =>
    whole === 0 ? 'none in the set' : `${part} of ${whole} (${formatQuantity((part / whole) * 100, '%', 3)})`
  return (
    <RuledTable
      caption="Against what is known"
      narrow="scroll"
      rows={pairs}
      rowKey={({ one }) => one}
      columns={[
        { label: 'Inspector', names: true, cell: ({ one }) => one },
        {
          label: 'Defects let pass',
          cell: (pair) => of(cell(pair, 0, 1), cell(pair, 0, 1) + cell(pair, 1, 1)),
        },
        {
          label: 'Sound joints refused',
          cell: (pair) => of(cell(pair, 1, 0), cell(pair, 0, 0) + cell(pair, 1, 0)),
        },
      ]}
    />
  )
}
