import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { specificationAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, NumberBox, TextBox, TickBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Disclosure } from '@/app/ui/disclosure'
import { Notice } from '@/app/ui/notice'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findLimit } from '@/shared/plan/catalogue'
import { AUTHORITIES, rulingOn, type Limit } from '@/shared/plan/requirement'
import { printedUnit } from '@/shared/quantity/unit'
import { refusal } from '@/shared/policy'
import { stateRequirement, withdrawRequirement } from './actions'

interface LimitPageProps {
  params: Promise<{ code: string; limit: string }>
}

/** One limit: its layers, which of them rules, and the form to lay another. */
export default async function LimitPage({ params }: LimitPageProps) {
  const { code: asked, limit: key } = await params
  const limit = findLimit(decodeURIComponent(key))
  if (!limit) notFound()
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const ruling = rulingOn(limit, visit.view?.state.facts.requirements ?? [])
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={specificationAddress(code)}
      place={[{ text: 'Specification', href: specificationAddress(code) }, { text: limit.label }]}
      title={limit.label}
      supplement={`A limit: ${limit.direction === 'at most' ? 'smaller is stricter' : 'larger is stricter'}`}
      cells={[
        {
          label: 'In force',
          value: (
            <>
              {limit.direction} <Quantity value={ruling.value} unit={limit.unit} />
            </>
          ),
        },
        { label: 'By', value: `${ruling.document} (${ruling.authority})` },
        {
          label: 'Against the default',
          value: ruling.relaxed
            ? 'looser'
            : ruling.value === limit.byDefault.value
              ? 'the default'
              : 'stricter',
        },
      ]}
    >
      {(view) => (
        <>
          {ruling.conflict && (
            <Notice kind="warning" title="Two layers of one authority disagree">
              The stricter one rules. Withdraw the one that does not hold.
            </Notice>
          )}
          <Section
            heading="Layers"
            lead="The strictest rules, unless a layer of higher authority expressly permits the looser value."
          >
            <RuledTable
              caption="Layers of the limit"
              captionHidden
              rows={ruling.layers}
              rowKey={(_layer, position) => position}
              columns={[
                {
                  label: 'Document',
                  names: true,
                  cell: ({ document, clause }) => `${document}${clause ? `, ${clause}` : ''}`,
                },
                { label: 'Authority', cell: ({ authority }) => authority },
                {
                  label: 'Value',
                  set: 'number',
                  cell: ({ value }) => (
                    <>
                      {limit.direction} <Quantity value={value} unit={limit.unit} />
                    </>
                  ),
                },
                {
                  label: 'Effect',
                  cell: ({ rules, relaxes }) =>
                    `${rules ? 'rules' : 'gives way'}${relaxes ? '; relaxes those below' : ''}`,
                },
              ]}
            />
            <p className="field-hint">
              The default comes from: {limit.byDefault.from.cite} ({limit.byDefault.from.how}).
            </p>
          </Section>
          {!refusal('state-requirement', view.actor) && <RequirementForms view={view} limit={limit} />}
        </>
      )}
    </ProgrammeSheet>
  )
}

function RequirementForms({ view, limit }: { view: ProgrammeView; limit: Limit }) {
  const hidden = { programme: view.code, limit: limit.key }
  return (
    <Section heading="State a requirement">
      <CommandForm
        action={stateRequirement}
        formKey={randomUUID()}
        hidden={hidden}
        label="State a requirement"
        className="form-narrow"
      >
        <ChoiceBox
          name="authority"
          label="Authority"
          choices={AUTHORITIES.map((value) => ({ value, text: value }))}
        />
        <TextBox name="document" label="Document" required />
        <TextBox name="clause" label="Clause" optional />
        <NumberBox name="value" label={`Value, ${limit.direction}`} unit={printedUnit(limit.unit)} required />
        <TickBox
          name="relaxes"
          label="The document expressly permits this although layers below it are stricter"
        />
        <LinesBox name="reason" label="Why" rows={2} required />
        <SubmitButton>State the requirement</SubmitButton>
      </CommandForm>
      {view.state.facts.requirements
        .filter((requirement) => requirement.limit === limit.key)
        .map(({ id, document, reason }) => (
          <Disclosure key={id} summary={`Withdraw ${document}: ${reason}`} printed={false}>
            <CommandForm
              action={withdrawRequirement}
              formKey={randomUUID()}
              hidden={{ ...hidden, requirement: id }}
              label={`Withdraw ${document}`}
              className="form-narrow"
            >
              <LinesBox name="reason" label="Why it does not stand any more" rows={2} required />
              <SubmitButton kind="danger">Withdraw the requirement</SubmitButton>
            </CommandForm>
          </Disclosure>
        ))}
    </Section>
  )
}
