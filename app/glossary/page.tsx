import { glossaryAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { GLOSSARY, ORIGINS_NOTE, originOf, termId } from '@/shared/glossary/glossary'

export const metadata = { title: 'Glossary – Liquidus' }

/** The words of the program, what they mean, and whose words they are. */
export default async function GlossaryPage() {
  const person = await requirePerson(glossaryAddress())
  return (
    <DeskSheet person={person} at={glossaryAddress()} title="Glossary" supplement={ORIGINS_NOTE}>
      {GLOSSARY.map(({ key, heading, terms }) => (
        <Section key={key} id={key} heading={heading}>
          <RuledTable
            caption={heading}
            captionHidden
            rows={terms}
            rowKey={({ term }) => term}
            columns={[
              { label: 'Term', names: true, cell: (term) => <span id={termId(term)}>{term.term}</span> },
              { label: 'Meaning', cell: ({ meaning }) => meaning },
              { label: 'Whose word', cell: originOf },
            ]}
          />
        </Section>
      ))}
    </DeskSheet>
  )
}
