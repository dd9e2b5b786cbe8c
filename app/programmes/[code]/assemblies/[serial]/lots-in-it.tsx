import { lotAddress, lotsAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ValueOf } from '@/shared/plan/parameter'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import type { AssemblyLife } from '@/shared/records/assembly-life'
import { kindAndPart, dispositionInWords } from '@/shared/records/lot-identity'
import { tracedParts } from '@/shared/rules/evaluation/lots-traced'
import { partsOfLot, verdictOfLot } from '../../lots/lot-parts'

/** The lots in an assembly, what was found and decided of each, and the parts traced to none. */
export function LotsInIt({ view, life }: { view: ProgrammeView; life: AssemblyLife }) {
  const needed = (view.state.facts.values.get(lotsNeeded.key) ?? []) as ValueOf<typeof lotsNeeded>
  const known = new Set(life.lots.map(kindAndPart))
  const untraced = [...tracedParts(needed)].filter(([key]) => !known.has(key)).map(([, part]) => part)
  return (
    <Section heading="Made of">
      {untraced.length > 0 && (
        <Notice kind="warning" title="Not traced to a lot">
          {`${untraced.join(', ')}. Should a lot of these turn out bad, nobody can tell whether this assembly is concerned. `}
          <a href={lotsAddress(view.code)}>Enter on the lot’s page where it went</a>
        </Notice>
      )}
      {life.lots.length > 0 && (
        <RuledTable
          caption="Lots in the assembly"
          captionHidden
          rows={life.lots}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Part', names: true, cell: ({ part }) => part },
            { label: 'Lot', cell: ({ code }) => <a href={lotAddress(view.code, code)}>{code}</a> },
            {
              label: 'Supplier',
              cell: ({ supplier, dateCode }) => (dateCode ? `${supplier}, date code ${dateCode}` : supplier),
            },
            {
              label: 'Findings',
              set: 'shrink',
              cell: (lot) => {
                const verdict = verdictOfLot(partsOfLot(view, lot))
                return verdict ? <VerdictMark verdict={verdict} /> : 'none'
              },
            },
            {
              label: 'Disposition',
              set: 'shrink',
              cell: dispositionInWords,
            },
            { label: 'Also in', set: 'number', cell: ({ usedIn }) => otherAssemblies(usedIn.length - 1) },
          ]}
        />
      )}
    </Section>
  )
}

const otherAssemblies = (count: number): string =>
  count === 0 ? 'no other' : count === 1 ? '1 other' : `${count} others`
