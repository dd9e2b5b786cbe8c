import { randomUUID } from 'node:crypto'
import type { ReactNode } from 'react'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox } from '@/app/forms/fields'
import type { FormAction } from '@/app/forms/form-state'
import { readingText } from '@/app/imports/chosen-mapping'
import { HowItIsRead } from '@/app/imports/how-it-is-read'
import { Button } from '@/app/ui/button'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ImportPreview } from '@/lib/queries/read-import'
import type { ReadingField } from '@/lib/readings/reading-field'
import { ImportButton } from './import-button'
import { WhatIsInIt } from './what-is-in-it'

interface ImportSheetProps {
  found: ImportPreview
  fields: readonly ReadingField[]
  /** The page's own address; the same form is read again there when columns are changed. */
  address: string
  hidden: Readonly<Record<string, string>>
  action: FormAction
  label: string
  /** Further fields, asked for with the import. */
  children?: ReactNode
}

/** A file before it is imported: its columns, its first rows, all that is wrong with it, and the confirmation. */
export function ImportSheet({ found, fields, address, hidden, action, label, children }: ImportSheetProps) {
  const { preview, parsed, mapping } = found
  const seen = readingText(mapping, preview?.form ?? {})
  return (
    <>
      <WhatIsInIt parsed={parsed} />
      {preview && (
        <CommandForm
          key={seen}
          action={action}
          formKey={randomUUID()}
          hidden={{ ...hidden, seen }}
          label={label}
          className="form-stack"
        >
          <HowItIsRead form={preview.form} />
          <Section heading="Which column is which">
            <div className="form-row">
              {fields.map(({ name, label: text, required }) => (
                <ChoiceBox
                  key={name}
                  name={`map.${name}`}
                  label={text}
                  optional={!required}
                  defaultValue={mapping?.[name] ?? ''}
                  choices={[
                    { value: '', text: 'no column' },
                    ...preview.headings.map((heading) => ({ value: heading, text: heading })),
                  ]}
                />
              ))}
              <Button type="submit" formMethod="get" formAction={address}>
                Read it again so
              </Button>
            </div>
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
          {children}
          {parsed.ok && (
            <ImportButton run={`${address}/run`}>{`Import ${parsed.readings.count} readings`}</ImportButton>
          )}
        </CommandForm>
      )}
    </>
  )
}
