import { findAddress } from '@/app/addresses'
import { answerFor } from '@/app/find/answer-for'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { KeyList } from '@/app/keys/key-list'
import { OTHER_KEYS, SINGLE_KEYS } from '@/app/keys/keys'
import { SingleKeysSwitch } from '@/app/keys/single-keys-switch'
import { Button } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { TextField } from '@/app/ui/field'
import { Section } from '@/app/ui/section'
import { textFromAddress } from '@/lib/queries/from-address'

export const metadata = { title: 'Find – Liquidus' }

const MOST_A_GROUP = 40

interface FindPageProps {
  searchParams: Promise<{ q?: string; in?: string }>
}

/** Everything that a query finds, by group; the dialog’s way without scripts. */
export default async function FindPage({ searchParams }: FindPageProps) {
  const person = await requirePerson(findAddress())
  const given = await searchParams
  const [query, inProgramme] = [textFromAddress(given.q), textFromAddress(given.in)]
  const { found, groups } = await answerFor(person, { query, inProgramme, most: MOST_A_GROUP })
  return (
    <DeskSheet
      person={person}
      at={findAddress()}
      title="Find"
      supplement="Programmes, items, values, limits, checks, lots, parts, logs, files, actions, people, words, pages"
      cells={query ? [{ label: 'Found', value: found }] : []}
    >
      <form method="get" role="search" className="form-row" aria-label="Find anything">
        <TextField
          name="q"
          type="search"
          label="Words, a number or a reference"
          hint={inProgramme && `What lies in ${inProgramme} comes first.`}
          defaultValue={query}
        />
        {inProgramme && <input type="hidden" name="in" value={inProgramme} />}
        <Button type="submit" kind="primary">
          Find
        </Button>
      </form>
      {groups.map(({ name, all, matches }) => (
        <Section key={name} heading={name} lead={all > matches.length ? `The first ${matches.length}.` : ''}>
          <ul className="find-list">
            {matches.map(({ label, detail, href }) => (
              <li key={`${href} ${label}`}>
                <a href={href}>{label}</a> <span className="faint">{detail}</span>
              </li>
            ))}
          </ul>
        </Section>
      ))}
      {query && found === 0 && (
        <Empty title={`Nothing that you may read holds “${query}”`}>
          Every word has to be there: try fewer of them, or the beginning of one.
        </Empty>
      )}
      <Section id="keys" heading="Keys">
        <KeyList keys={[...SINGLE_KEYS, ...OTHER_KEYS]} />
        <SingleKeysSwitch />
      </Section>
    </DeskSheet>
  )
}
