import { parameterAddress, recordKindAddress } from '@/app/addresses'
import { Disclosure } from '@/app/ui/disclosure'
import { Working } from '@/app/ui/working'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { exactly } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { OptionCostCase } from '@/shared/cost/option-cost'
import { letterOf } from '@/shared/gate/option-letter'
import { reworkOnRecord } from '@/shared/gate/rework-on-record'
import { computed } from '@/shared/sources/provenance'
import { processCosts } from '@/shared/plan/parameters/soldering-process'
import type { WorkingLine } from '@/shared/rules/finding'
import { money } from './cost-rows'

const figure = (amount: number): string => money(exactly(amount))

interface AssumptionsProps {
  view: ProgrammeView
  costCase: OptionCostCase
}

/** How the figures came about, what they take for granted, and what rework has cost so far. */
export function Assumptions({ view, costCase }: AssumptionsProps) {
  const { reworkCounted } = costCase
  const recorded = reworkOnRecord(view.state.facts)
  return (
    <div className="option-assumptions">
      <ul className="finding-notes">
        <li>
          Costs are the amounts that the answers to the study’s questions name, and the study’s own figures
          where no answer names that kind, in one currency; a board’s cost holds all its process adds, so that
          the cost table adds nothing but defects. What one alternative prices, the others have to price too.
        </li>
        <li>
          {reworkCounted ? (
            <>
              Defects are counted over all joints of the hole table, with the costs of{' '}
              <a href={parameterAddress(view.code, processCosts.key)}>the process’s cost table</a>.
            </>
          ) : (
            <>
              Rework and field repair are in none of the sums: the rules give a figure once{' '}
              <a href={parameterAddress(view.code, processCosts.key)}>the process’s cost table</a> has a row
              for each alternative’s process.
            </>
          )}
        </li>
        <li>Money later counts as money now; nothing is discounted.</li>
        {recorded && (
          <li>
            <a href={recordKindAddress(view.code, 'rework')}>Rework on record</a>: {recorded.joints} joints on{' '}
            {recorded.assemblies} inspected assemblies
            {recorded.priced
              ? `, ${figure(recorded.cost)} in all, ${figure(recorded.costPerAssembly)} an assembly.`
              : `, ${figure(recorded.cost)} of material; the hours have no price yet.`}
          </li>
        )}
      </ul>
      <Disclosure summary="Working">
        <Working
          lines={linesOf(costCase)}
          sources={[computed('Costs of alternatives, and expectation of independent defects')]}
        />
      </Disclosure>
    </div>
  )
}

const linesOf = ({ costs, boards }: OptionCostCase): WorkingLine[] =>
  costs.flatMap(({ once, running, total, rework }, position) => [
    ...(rework
      ? [
          {
            label: `${letterOf(position)}, rework and field repair a board`,
            formula: 'joints · defects · cost of a defect',
            numbers: `${rework.joints} · ${amountInWords(rework.defectsPerMillion)} ÷ 10⁶ · ${money(rework.perDefect)}`,
            result: money(rework.total),
          },
        ]
      : []),
    {
      label: `${letterOf(position)}, over the boards`,
      formula: 'once + boards · a further board',
      numbers: `${money(once)} + ${Math.round(boards)} · ${money(running)}`,
      result: money(total),
    },
  ])
