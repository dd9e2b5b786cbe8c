import { Button } from '@/app/ui/button'
import { ChoiceField } from '@/app/ui/field'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { delimiterInWords } from '@/lib/readings/delimiter'
import type { ColumnMapping } from '@/lib/readings/column-mapping'
import type { ReadingField } from '@/lib/readings/reading-field'
import type { ImportPreview } from '@/lib/queries/import-preview'

interface PreviewProps {
  found: ImportPreview
  fields: readonly ReadingField[]
  mapping: ColumnMapping | undefined
  /** The page's own address and the parameters it keeps. */
  address: string
  keep: Readonly<Record<string, string>>
}

/** What a file holds: its columns, its first rows, and everything that is wrong with it by line and column. */
export function Preview({ found: { preview, parsed }, fields, mapping, address, keep }: PreviewProps) {
  const chosen = mapping ?? preview?.suggested ?? {}
  return (
    <>
      {parsed.ok ? (
        <Notice kind="success" title={`${parsed.readings.count} readings can be imported`}>
          {parsed.ignoredHeadings.length > 0
            ? `Not imported: ${parsed.ignoredHeadings.join(', ')}.`
            : 'Every column is used.'}
        </Notice>
      ) : (
        <Notice
          kind="refusal"
          announced
          title={`Nothing is imported: ${parsed.errorCount} ${parsed.errorCount === 1 ? 'thing is' : 'things are'} wrong`}
        >
          <ul>
            {parsed.errors.slice(0, 50).map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
          {parsed.errorCount > 50 && (
            <p>And {parsed.errorCount - 50} more. Mend the file and send it again.</p>
          )}
        </Notice>
      )}
      {preview && (
        <Section
          heading="Which column is which"
          lead={`The file is separated by ${delimiterInWords(preview.delimiter)}.`}
        >
          <form method="get" action={address} className="form-row" aria-label="Columns">
            {Object.entries(keep).map(([name, value]) => (
              <input key={name} type="hidden" name={name} value={value} />
            ))}
            {fields.map(({ name, label, required }) => (
              <ChoiceField
                key={name}
                name={`map.${name}`}
                label={label}
                optional={!required}
                defaultValue={chosen[name] ?? ''}
                choices={[
                  { value: '', text: 'no column' },
                  ...preview.headings.map((heading) => ({ value: heading, text: heading })),
                ]}
              />
            ))}
            <Button type="submit">Read it again so</Button>
          </form>
          <RuledTable
            caption="First rows of the file"
            narrow="scroll"
            rows={preview.sampleRows}
            rowKey={(_row, position) => position}
            columns={preview.headings.map((heading, index) => ({
              label: heading,
              names: index === 0,
              cell: (row: readonly string[]) => row[index] ?? '',
            }))}
          />
        </Section>
      )}
    </>
  )
}
