import { capitalised } from '@/shared/quantity/capitalised'
import { SpansOfTime, type SpanRow } from '@/app/drawing/spans-of-time'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { AGEING_METHODS, type AgeingMethod } from '@/shared/materials/ageing-methods'
import {
  ageingEquivalence,
  STEAM_HAS_NONE,
  type AgeingEquivalence,
} from '@/shared/physics/ageing-equivalence'
import type { ValueOf } from '@/shared/plan/parameter'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { AgeingQuestion } from './ageing-question'
import { Assumptions } from './assumptions'
import { monthsInWords, modelsInWords } from './months-in-words'

interface Shown {
  readonly method: AgeingMethod
  readonly specified: boolean
  readonly equivalence: AgeingEquivalence
}

/** The ageings drawn against the store, their numbers, and what has to be believed for them. */
export function AgeingsShown({ view, question }: { view: ProgrammeView; question: AgeingQuestion }) {
  const { store, wantedMonths, own } = question
  const conditions = (view.state.facts.values.get(testConditions.key) ?? []) as ValueOf<typeof testConditions>
  const specified = new Set<string>(conditions.map(({ ageing }) => ageing))
  const shown: Shown[] = [
    ...(own ? [{ method: own, specified: false }] : []),
    ...Object.entries(AGEING_METHODS)
      .filter(([key]) => key !== 'none')
      .map(([key, method]) => ({ method, specified: specified.has(key) })),
  ].map((one) => ({ ...one, equivalence: ageingEquivalence(one.method, store) }))
  return (
    <>
      {shown.some((one) => one.specified && one.method.acts === 'steam') && (
        <Notice kind="warning" title="Steam hours have no storage time">
          {`This programme’s test is specified after steam. ${capitalised(STEAM_HAS_NONE)}. It tells a sound coating from a thin or contaminated one, and says nothing of months.`}
        </Notice>
      )}
      <Section heading="Months in store">
        <SpansOfTime
          title={`Ageings against a store at ${formatQuantity(store.temperatureC, '°C')} and ${formatNumber(store.relativeHumidityPct)} % RH`}
          description={shown
            .map(({ method, equivalence }) => `${method.label}: ${monthsInWords(equivalence)}`)
            .join('; ')}
          rows={shown.map(rowOf)}
          wanted={{
            months: wantedMonths,
            name: `to be stood for: ${formatQuantity(wantedMonths, 'months')}`,
          }}
          numbers={{
            columns: [
              { label: 'Ageing' },
              { label: 'Stands for', set: 'text' },
              { label: 'By', set: 'text' },
            ],
            rows: shown.map(({ method, equivalence }) => [
              method.label,
              monthsInWords(equivalence),
              modelsInWords(equivalence),
            ]),
          }}
        />
        <p className="field-hint">
          Bars run from the least to the most that published constants give. Solid: growth of compound, which
          spoils a store’s tin. Dashed: constants fitted to aluminium in plastic packages, shown and never
          judged by. An arrow runs past a thousand years.
        </p>
      </Section>
      <Section heading="Ageing by ageing">
        <RuledTable
          caption="Equivalent storage of each ageing"
          captionHidden
          rows={shown}
          rowKey={({ method }) => method.label}
          columns={[
            {
              label: 'Ageing',
              names: true,
              cell: ({ method, specified: asked }) =>
                asked ? `${method.label} (specified here)` : method.label,
            },
            { label: 'Acts by', set: 'shrink', cell: ({ method }) => method.acts },
            { label: 'Stands for', cell: ({ equivalence }) => monthsInWords(equivalence) },
            { label: 'By', cell: ({ equivalence }) => modelsInWords(equivalence) },
            { label: 'From', cell: ({ method: { from } }) => `${from.cite} (${from.how})` },
          ]}
        />
      </Section>
      <Assumptions />
    </>
  )
}

function rowOf({ method, specified, equivalence }: Shown): SpanRow {
  const base = { name: method.label, strong: specified }
  if (equivalence.kind === 'none') {
    return { ...base, months: [], none: 'no storage time' }
  }
  return {
    ...base,
    months: equivalence.models.map(({ months }) => months),
    borrowed: equivalence.mechanism !== 'growth of compound',
  }
}
