import { itemAddress, limitAddress, parameterAddress, specificationAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALL_LIMITS } from '@/shared/plan/catalogue'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { rulingOn } from '@/shared/plan/requirement'
import { STAGE_NAMES } from '@/shared/plan/stage'

interface SpecificationPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<{ only?: string }>
}

/** Every specified value and every limit of the programme on one sheet. */
export default async function SpecificationPage({ params, searchParams }: SpecificationPageProps) {
  const { code: asked } = await params
  const { only } = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const values = visit.view?.state.facts.values
  const asksFor = visit.view?.state.items.flatMap(({ definition }) => definition.parameters) ?? []
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={specificationAddress(code)}
      place={[{ text: 'Specification' }]}
      title="Specification"
      supplement="The thread from which every later limit is drawn"
      cells={[
        { label: 'Specified', value: asksFor.filter(({ key }) => values?.has(key)).length },
        { label: 'Asked for', value: asksFor.length },
      ]}
    >
      {(view) => (
        <>
          <p>
            {only === 'missing' ? (
              <a href={specificationAddress(code)}>Show all values</a>
            ) : (
              <a href={`${specificationAddress(code)}?only=missing`}>Show only what is not specified</a>
            )}
          </p>
          {view.state.items
            .filter(({ definition }) => definition.parameters.length > 0)
            .map(({ definition }) => (
              <ItemValues
                key={definition.key}
                view={view}
                item={definition}
                missingOnly={only === 'missing'}
              />
            ))}
          <Limits view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
}

function ItemValues({
  view,
  item,
  missingOnly,
}: {
  view: ProgrammeView
  item: ProgrammeView['state']['items'][number]['definition']
  missingOnly: boolean
}) {
  const rows = item.parameters.filter(({ key }) => !missingOnly || !view.state.facts.values.has(key))
  if (rows.length === 0) return null
  return (
    <Section
      heading={<a href={itemAddress(view.code, item.key)}>{item.title}</a>}
      lead={STAGE_NAMES[item.stage]}
    >
      <RuledTable
        caption={`Values of ${item.title}`}
        captionHidden
        narrow="cards-early"
        rows={rows}
        rowKey={({ key }) => key}
        columns={[
          {
            label: 'Value',
            names: true,
            cell: ({ key, label }) => <a href={parameterAddress(view.code, key)}>{label}</a>,
          },
          {
            label: 'As specified',
            cell: (parameter) => (
              <ParameterValue parameter={parameter} value={view.state.facts.values.get(parameter.key)} />
            ),
          },
          { label: 'Owner', set: 'shrink', cell: ({ owner }) => DEPARTMENT_NAMES[owner] },
          {
            label: 'Revision',
            cell: ({ key }) => {
              const revision = view.state.revisions.get(key)
              return revision ? (
                <>
                  {revision.number}, {revision.authorName}, <Day at={revision.at} />: {revision.reason}
                </>
              ) : (
                '–'
              )
            },
          },
        ]}
      />
    </Section>
  )
}

function Limits({ view }: { view: ProgrammeView }) {
  const rulings = ALL_LIMITS.map((limit) => rulingOn(limit, view.state.facts.requirements))
  return (
    <Section
      heading="Limits"
      lead="The strictest layer rules, unless a higher authority expressly relaxes it."
    >
      <RuledTable
        caption="Limits in force"
        captionHidden
        rows={rulings}
        rowKey={({ limit }) => limit.key}
        columns={[
          {
            label: 'Limit',
            names: true,
            cell: ({ limit }) => <a href={limitAddress(view.code, limit.key)}>{limit.label}</a>,
          },
          {
            label: 'Value',
            set: 'number',
            cell: ({ limit, value }) => (
              <>
                {limit.direction} <Quantity value={value} unit={limit.unit} />
              </>
            ),
          },
          { label: 'From', cell: ({ document, authority }) => `${document} (${authority})` },
          {
            label: 'Against the default',
            cell: ({ relaxed, conflict, value, limit }) =>
              `${relaxed ? 'looser' : value === limit.byDefault.value ? 'the default' : 'stricter'}${conflict ? '; layers of one authority disagree' : ''}`,
          },
        ]}
      />
    </Section>
  )
}
